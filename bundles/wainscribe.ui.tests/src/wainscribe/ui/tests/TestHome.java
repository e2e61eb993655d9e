// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.tests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;

import wainscribe.layout.pattern.BuiltInPatterns;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.storage.HomeFolder;
import wainscribe.survey.Survey;
import wainscribe.survey.SurveyException;
import wainscribe.survey.SurveyImport;
import wainscribe.survey.SurveyReader;
import wainscribe.ui.session.HomeProjects;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.HomeSessions;

/** A home in the workspace of the tests, made from the text of a survey; gone when closed. */
final class TestHome implements AutoCloseable {

	/** A small plain room that could be dressed, in an old house whose woodwork is to be sanded. */
	static final String SURVEY = """
		# units: in
		kind,room,wall,name,x,y,width,height,depth,angle,note
		home,,,Test house,,,,,,,built=1911;currency=USD;country=US
		room,Study,,,,,,108,,,use=living;air=20C;rh=45%;surface=18C
		wall,Study,A,,,,144,,,,stud=16
		wall,Study,B,,,,120,,,,stud=16
		wall,Study,C,,,,144,,,,stud=16
		wall,Study,D,,,,120,,,,stud=16
		door,Study,A,door,90,0,32,80,,,casing=2 1/2;casing-depth=3/4
		box,Study,B,outlet,60,16,,,,,type=receptacle;gang=1;at=centre
		finish,Study,,old woodwork,,,,,,,surface=trim;gloss=G5;binder=alkyd;substrate=wood;sound=yes;disturb=yes
		brief,Study,,,,,,,,,pattern=frames-under-rail;rail=38;gap=3
		""";

	private final IProject project;
	private final HomeSession session;

	private TestHome(IProject project, HomeSession session) {
		this.project = project;
		this.session = session;
	}

	/** Makes a home with the rooms of a survey. */
	static TestHome of(String name, String survey) throws IOException, CoreException, SurveyException {
		Path directory = ResourcesPlugin.getWorkspace().getRoot().getLocation().toPath().resolve(name);
		Home home = WainscribeFactory.eINSTANCE.createHome();
		home.setId(name);
		HomeFolder folder = HomeFolder.create(directory, home);
		Path file = survey(survey);
		Survey read = new SurveyReader(Set.copyOf(BuiltInPatterns.catalogue().ids())).read(file).orRefuse();
		for (Room room : new SurveyImport().into(read, home, folder.rooms()).rooms()) {
			folder.add(room);
		}
		folder.save();
		IProject project = new HomeProjects(ResourcesPlugin.getWorkspace()).adopt(directory, null);
		Widgets.settle();
		return new TestHome(project, sessions().openHome(project));
	}

	/** Writes a survey file. */
	static Path survey(String text) throws IOException {
		Path file = Files.createTempFile("survey", ".csv");
		Files.writeString(file, text);
		file.toFile().deleteOnExit();
		return file;
	}

	static HomeSessions sessions() {
		return window().getService(HomeSessions.class);
	}

	static IWorkbenchWindow window() {
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		return window == null ? PlatformUI.getWorkbench().getWorkbenchWindows()[0] : window;
	}

	/** Shows a view. */
	static <T extends IViewPart> T show(String id, Class<T> kind) throws PartInitException {
		T view = kind.cast(window().getActivePage().showView(id, null, IWorkbenchPage.VIEW_ACTIVATE));
		Widgets.settle();
		return view;
	}

	HomeSession session() {
		return session;
	}

	IProject project() {
		return project;
	}

	@Override
	public void close() throws CoreException {
		window().getActivePage().closeAllEditors(false);
		sessions().close(session);
		project.delete(true, true, null);
		Widgets.settle();
	}
}
