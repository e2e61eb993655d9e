// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.tests;

import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.ActionFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

import wainscribe.model.Brief;
import wainscribe.model.Home;
import wainscribe.model.ProfileUse;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.storage.HomeFolder;
import wainscribe.profile.TrimProfile;
import wainscribe.profile.file.HomeProfiles;
import wainscribe.profile.file.ProfileFile;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionPath;
import wainscribe.profile.section.SectionPoint;
import wainscribe.profile.section.Spot;
import wainscribe.ui.ProfileEditors;
import wainscribe.ui.profile.ProfileEditor;
import wainscribe.ui.profile.desk.DeskZoom;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.session.ProfileSession;

/** A profile editor that is open on a real file of a home, with mouse and keyboard. The profile: 30 mm wide, 12 mm thick. */
abstract class OpenDesk {

	static final ProfileSection STRIP = SectionPath.atOrigin().out(mm(12)).along(mm(30)).out(mm(-12)).section();

	private static final int STEPS = 6;

	IProject project;
	IFile file;
	ProfileEditor editor;
	ProfileSession session;
	ProfileDesk desk;
	GraphicalViewer viewer;

	@BeforeEach
	void open() throws Exception {
		project = ResourcesPlugin.getWorkspace().getRoot().getProject("profiles-" + System.nanoTime());
		project.create(null);
		project.open(null);
		Home home = WainscribeFactory.eINSTANCE.createHome();
		home.setId("home");
		home.setName("Schoolhouse for tests");
		home.setUnits(LengthUnit.MILLIMETRE);
		Brief brief = WainscribeFactory.eINSTANCE.createBrief();
		brief.setId("home-brief");
		home.setBrief(brief);
		Path folder = project.getLocation().toPath();
		HomeFolder.create(folder, home).save();
		Path path = HomeProfiles.fileFor(folder, "strip");
		new ProfileFile(path).write(new TrimProfile("strip", "Strip", Set.of(ProfileUse.FRAME), STRIP));
		project.refreshLocal(IResource.DEPTH_INFINITE, null);
		file = project.getFolder(HomeProfiles.FOLDER).getFile(path.getFileName().toString());
		show();
	}

	void show() throws Exception {
		editor = (ProfileEditor) ProfileEditors.open(page(), file);
		session = Adapters.adapt(editor, ProfileSession.class);
		desk = Adapters.adapt(editor, ProfileDesk.class);
		viewer = editor.getGraphicalViewer();
		settle();
		Adapters.adapt(editor, DeskZoom.class).zoomToRatio(3);
		Adapters.adapt(editor, DeskZoom.class).fit();
		settle();
	}

	@AfterEach
	void close() throws Exception {
		page().closeEditor(editor, false);
		settle();
		project.delete(true, true, null);
	}

	/** Returns where a point of the section lies on the viewer's control. */
	Point pixel(double up, double out) {
		Point pixel = desk.plane().pixel(new Spot(up, out));
		((GraphicalEditPart) viewer.getContents()).getFigure().translateToAbsolute(pixel);
		return pixel;
	}

	void drag(Point from, Point to) {
		dragTo(from, to);
		send(SWT.MouseUp, to, 1, SWT.BUTTON1);
		settle();
	}

	void dragTo(Point from, Point to) {
		send(SWT.MouseMove, from, 0, 0);
		send(SWT.MouseDown, from, 1, 0);
		for (int i = 1; i <= STEPS; i++) {
			send(SWT.MouseMove, new Point(from.x + (to.x - from.x) * i / STEPS, from.y + (to.y - from.y) * i / STEPS), 0, SWT.BUTTON1);
		}
		settle();
	}

	void click(Point at) {
		send(SWT.MouseMove, at, 0, 0);
		send(SWT.MouseDown, at, 1, 0);
		send(SWT.MouseUp, at, 1, SWT.BUTTON1);
		settle();
	}

	void key(int code) {
		key(code, 0);
	}

	void key(int code, int modifiers) {
		Event event = new Event();
		event.keyCode = code;
		event.character = code < SWT.KEYCODE_BIT ? (char) code : 0;
		event.stateMask = modifiers;
		viewer.getControl().notifyListeners(SWT.KeyDown, event);
		settle();
	}

	void tab(boolean forward) {
		Event event = new Event();
		event.detail = forward ? SWT.TRAVERSE_TAB_NEXT : SWT.TRAVERSE_TAB_PREVIOUS;
		event.doit = true;
		viewer.getControl().notifyListeners(SWT.Traverse, event);
		settle();
	}

	/** Types into the fields over the desk and presses Enter. */
	void type(String... values) {
		Text[] fields = fields();
		for (int i = 0; i < values.length; i++) {
			fields[i].setText(values[i]);
		}
		fields[0].notifyListeners(SWT.DefaultSelection, new Event());
		settle();
	}

	Text[] fields() {
		for (Control child : ((Composite) viewer.getControl()).getChildren()) {
			if (child instanceof Composite box) {
				return Stream.of(box.getChildren()).filter(Text.class::isInstance).toArray(Text[]::new);
			}
		}
		return new Text[0];
	}

	void act(ActionFactory action) {
		editor.getActionRegistry().getAction(action.getId()).run();
		settle();
	}

	ProfileSection section() {
		return session.draft().section();
	}

	static SectionPoint at(long up, long out) {
		return SectionPoint.ofMillimetres(up, out);
	}

	static Length mm(long millimetres) {
		return Length.ofMillimetres(millimetres);
	}

	static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
	}

	void settle() {
		while (Display.getCurrent().readAndDispatch()) {
			// all of it
		}
		if (viewer != null && viewer.getControl() != null && !viewer.getControl().isDisposed()) {
			viewer.flush();
		}
	}

	private void send(int type, Point at, int button, int state) {
		Event event = new Event();
		event.x = at.x;
		event.y = at.y;
		event.button = button;
		event.stateMask = state;
		event.count = 1;
		viewer.getControl().notifyListeners(type, event);
	}
}
