// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.ui.actions.ActionFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import wainscribe.profile.imported.SectionImport;
import wainscribe.profile.section.ProfileSection;
import wainscribe.ui.profile.actions.SectionSteps;
import wainscribe.ui.profile.backdrop.Backdrop;
import wainscribe.ui.profile.outlines.DrawingUnit;
import wainscribe.ui.profile.outlines.ImportOutline;
import wainscribe.ui.profile.sheet.SaveSheet;
import wainscribe.ui.profile.tools.AddPointTool;
import wainscribe.ui.profile.tools.MoveBackdropTool;
import wainscribe.ui.profile.tools.ScaleBackdropTool;

/** A section drawn from nothing, from a drawing, and after a picture. */
class DrawingToolTest extends OpenDesk {

	@TempDir
	Path folder;

	@Test
	void aSectionIsDrawnByClicksAndClosed() {
		SectionSteps steps = new SectionSteps(viewer, desk);
		steps.clear();
		assertTrue(session.faults().getFirst().sentence().contains("nothing is drawn"), session.faults().toString());
		viewer.getEditDomain().setActiveTool(new AddPointTool(viewer, desk, steps));
		click(pixel(0, 0));
		click(pixel(0, 9));
		click(pixel(20, 9));
		click(pixel(20, 4));
		assertEquals("Draw Line", session.history().getUndoCommand().getLabel());
		key(SWT.BS);
		click(pixel(20, 0));
		key(SWT.CR);
		assertSame(viewer.getEditDomain().getDefaultTool(), viewer.getEditDomain().getActiveTool());
		assertTrue(session.faults().isEmpty(), session.faults().toString());
		assertEquals(4, section().outline().size());
		assertEquals(mm(20), section().box().width());
		assertEquals(mm(9), section().box().projection());
		viewer.getEditDomain().setActiveTool(new AddPointTool(viewer, desk, steps));
		click(pixel(10, 9));
		assertEquals(5, section().outline().size(), "in a closed outline a click puts a point in");
		key(SWT.ESC);
		while (session.history().canUndo()) {
			act(ActionFactory.UNDO);
		}
		assertEquals(STRIP, section());
	}

	@Test
	void anOutlineIsTakenInTheUnitThatIsSaid() throws Exception {
		Path file = folder.resolve("cap.svg");
		Files.writeString(file, "<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"M0 0 H1 V2 H0 Z\"/></svg>");
		ProfileSection inches = new SectionImport(DrawingUnit.INCH.millimetres()).read(file);
		new ImportOutline(editor.getSite().getShell(), session).take(inches);
		assertEquals(50.8, section().box().width().approximateMillimetres());
		assertEquals(25.4, section().box().projection().approximateMillimetres());
		assertEquals("Take Outline", session.history().getUndoCommand().getLabel());
		act(ActionFactory.UNDO);
		assertEquals(STRIP, section());
	}

	@Test
	void aPictureGetsItsScaleByTwoPointsAndIsMoved() {
		Backdrop laid = new Backdrop(picture(), 0.5, 0, 0, true);
		session.execute(session.laying("Choose Picture", laid));
		settle();
		viewer.getEditDomain().setActiveTool(new ScaleBackdropTool(viewer, desk));
		click(pixel(0, 0));
		click(pixel(20, 0));
		type("40");
		Backdrop scaled = session.backdrop().orElseThrow();
		assertEquals(1, scaled.scale(), 0.05, "twice as large as it was laid");
		viewer.getEditDomain().setActiveTool(new MoveBackdropTool(viewer, desk));
		drag(pixel(5, 5), pixel(8, 5));
		assertEquals(scaled.up() + 3, session.backdrop().orElseThrow().up(), 0.5);
		act(ActionFactory.UNDO);
		act(ActionFactory.UNDO);
		assertEquals(laid, session.backdrop().orElseThrow());
	}

	@Test
	void theSheetIsAPdf() throws Exception {
		Path file = folder.resolve("sheet.pdf");
		new SaveSheet(editor.getSite().getShell(), session).write(file);
		assertEquals("%PDF", new String(Arrays.copyOf(Files.readAllBytes(file), 4), StandardCharsets.US_ASCII));
		try (var left = Files.list(folder)) {
			assertEquals(1, left.count(), "nothing is left beside it");
		}
	}

	private Path picture() {
		ImageLoader loader = new ImageLoader();
		loader.data = new ImageData[] { new ImageData(20, 60, 24, new PaletteData(0xff0000, 0xff00, 0xff)) };
		Path file = folder.resolve("scan.png");
		loader.save(file.toString(), SWT.IMAGE_PNG);
		return file;
	}
}
