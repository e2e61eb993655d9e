// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.FileEditorInput;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

import wainscribe.layout.FrameOutline;
import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.ui.elevation.ElevationEditor;
import wainscribe.ui.elevation.editparts.ThingEditPart;
import wainscribe.ui.elevation.editparts.WallEditPart;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.Projection;
import wainscribe.ui.elevation.table.TableZoom;
import wainscribe.ui.session.RoomSession;

/** An elevation editor that is open on a real room, with a hand to use it and eyes to see what came of it. */
abstract class OpenEditor {

	Schoolroom home;
	ElevationEditor editor;
	RoomSession session;
	GraphicalViewer viewer;
	Hand hand;

	@BeforeEach
	void open() throws Exception {
		home = home("schoolhouse-" + System.nanoTime());
		show();
	}

	/** Makes the home that is drawn. */
	Schoolroom home(String name) throws Exception {
		return Schoolroom.create(name);
	}

	@AfterEach
	void close() throws Exception {
		page().closeEditor(editor, false);
		home.delete();
	}

	void show() throws Exception {
		editor = (ElevationEditor) page().openEditor(new FileEditorInput(home.file()), ElevationEditor.ID);
		session = Adapters.adapt(editor, RoomSession.class);
		viewer = editor.getGraphicalViewer();
		hand = new Hand(viewer);
		hand.settle();
		Adapters.adapt(editor, TableZoom.class).zoomTo(16);
		hand.settle();
	}

	void undo() {
		editor.getActionRegistry().getAction(ActionFactory.UNDO.getId()).run();
		hand.settle();
	}

	void redo() {
		editor.getActionRegistry().getAction(ActionFactory.REDO.getId()).run();
		hand.settle();
	}

	List<FrameOutline> frames() {
		return session.design().layout().frames().toList();
	}

	WallEditPart part(Wall wall) {
		return (WallEditPart) viewer.getEditPartRegistry().get(wall);
	}

	ThingEditPart part(Placed element) {
		return (ThingEditPart) viewer.getEditPartRegistry().get(element);
	}

	<T extends ThingEditPart> T thing(Wall wall, Class<T> kind) {
		return part(wall).things().stream().filter(kind::isInstance).map(kind::cast).findFirst().orElseThrow();
	}

	/** Brings a point of an elevation into view and returns where it is on the control. */
	Point at(Wall wall, Length x, Length y) {
		Projection place = Adapters.adapt(editor, DrawingTable.class).placeOf(wall);
		return shown(part(wall).getFigure(), new Point(place.x(x), place.y(y)));
	}

	/** Brings the middle of an edge of a part into view and returns where it is on the control. */
	Point edge(GraphicalEditPart part, boolean left) {
		Rectangle bounds = part.getFigure().getBounds();
		return shown(part.getFigure(), new Point(left ? bounds.x : bounds.right() - 1, bounds.getCenter().y));
	}

	private Point shown(IFigure figure, Point point) {
		Viewport port = ((FigureCanvas) viewer.getControl()).getViewport();
		port.setViewLocation(point.x - port.getSize().width / 2, point.y - port.getSize().height / 2);
		viewer.flush();
		Point onControl = point.getCopy();
		figure.translateToAbsolute(onControl);
		return onControl;
	}

	ThingEditPart selected() {
		return (ThingEditPart) viewer.getFocusEditPart();
	}

	Text field() {
		for (Control child : ((Composite) viewer.getControl()).getChildren()) {
			if (child instanceof Composite box) {
				for (Control inner : box.getChildren()) {
					if (inner instanceof Text text) {
						return text;
					}
				}
			}
		}
		throw new AssertionError("no field to type in");
	}

	static Stream<String> tips(Composite parent) {
		return Stream.of(parent.getChildren()).filter(Control::isVisible).map(Control::getToolTipText).filter(Objects::nonNull);
	}

	static void assertEqual(Room expected, Room actual) {
		assertTrue(new EcoreUtil.EqualityHelper().equals(expected, actual), "the equal room");
	}

	static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
	}
}
