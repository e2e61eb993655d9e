// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.speed;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.FileEditorInput;
import org.junit.jupiter.api.Test;

import wainscribe.model.Wall;
import wainscribe.ui.elevation.ElevationEditor;
import wainscribe.ui.elevation.table.TableZoom;
import wainscribe.ui.session.RoomSession;

/**
 * Compares the drawing table with a bare graphical editor in the same workbench and writes the figures to a file; run by
 * {@code releng/benchmark editor}. Says how fast, never fails for being slow.
 */
class EditorSpeed {

	private static final int ROUNDS = Integer.getInteger("wainscribe.speed.rounds", 7);
	private static final int STEPS = 100;
	private static final double NANOS_PER_MILLI = 1e6;
	private static final int DRAGGED = 3;

	private final List<Double> openTable = new ArrayList<>();
	private final List<Double> openBare = new ArrayList<>();
	private final List<Double> frameTable = new ArrayList<>();
	private final List<Double> frameBare = new ArrayList<>();
	private final List<Double> workTable = new ArrayList<>();
	private final List<Double> workBare = new ArrayList<>();

	@Test
	void measure() throws Exception {
		CrowdedRoom home = CrowdedRoom.create("crowded");
		for (int i = 0; i < 2; i++) {
			bare(home.file());
			table(home.file());
		}
		for (List<Double> warm : List.of(openTable, openBare, frameTable, frameBare, workTable, workBare)) {
			warm.clear();
		}
		for (int i = 0; i < ROUNDS; i++) {
			bare(home.file());
			table(home.file());
		}
		home.delete();
		List<String> lines = new ArrayList<>();
		line(lines, "open", openTable, openBare);
		line(lines, "frame", frameTable, frameBare);
		line(lines, "work", workTable, workBare);
		String file = System.getenv().getOrDefault("WAINSCRIBE_SPEED_FILE", "target/editor-speed.txt");
		Files.write(Path.of(System.getProperty("wainscribe.speed.file", file)), lines);
		assertTrue(lines.size() > 2, "something was measured");
	}

	private void bare(IFile file) throws Exception {
		BareEditor editor = (BareEditor) open(file, BareEditor.ID, openBare);
		drag(editor.getGraphicalViewer(), editor.rectangle(), frameBare, workBare);
		page().closeEditor(editor, false);
		settle();
	}

	private void table(IFile file) throws Exception {
		ElevationEditor editor = (ElevationEditor) open(file, ElevationEditor.ID, openTable);
		Wall wall = Adapters.adapt(editor, RoomSession.class).room().getWalls().getFirst();
		Adapters.adapt(editor, TableZoom.class).fitWall(wall);
		settle();
		GraphicalViewer viewer = editor.getGraphicalViewer();
		drag(viewer, (GraphicalEditPart) viewer.getEditPartRegistry().get(wall.getBoxes().get(DRAGGED)), frameTable, workTable);
		page().closeEditor(editor, false);
		settle();
	}

	/** Opens an editor: until it is painted and nothing more is waiting to be done. */
	private static IEditorPart open(IFile file, String id, List<Double> times) throws Exception {
		long start = System.nanoTime();
		IEditorPart editor = page().openEditor(new FileEditorInput(file), id);
		settle();
		times.add((System.nanoTime() - start) / NANOS_PER_MILLI);
		return editor;
	}

	private static void drag(GraphicalViewer viewer, GraphicalEditPart part, List<Double> frames, List<Double> work) {
		Point middle = part.getFigure().getBounds().getCenter();
		part.getFigure().translateToAbsolute(middle);
		Strokes strokes = new Strokes(viewer);
		strokes.drag(middle, STEPS);
		frames.add(strokes.frame());
		work.add(strokes.work());
	}

	private static void settle() {
		Display display = Display.getCurrent();
		while (display.readAndDispatch()) {
			// all of it
		}
	}

	private static void line(List<String> lines, String what, List<Double> table, List<Double> bare) {
		double ours = median(table);
		double theirs = median(bare);
		lines.add(String.format(Locale.ROOT, "%s %.3f %.3f %.2f", what, ours, theirs, ours / theirs));
	}

	private static double median(List<Double> times) {
		List<Double> sorted = new ArrayList<>(times);
		Collections.sort(sorted);
		return sorted.get(sorted.size() / 2);
	}

	private static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
	}
}
