// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.swt.SWT;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.views.properties.IPropertySource;
import org.junit.jupiter.api.Test;

import wainscribe.profile.file.ProfileFile;
import wainscribe.profile.section.ArcSegment;
import wainscribe.profile.section.CurveSegment;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.StraightSegment;
import wainscribe.ui.drafting.figures.NoteFigure;
import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.properties.SheetSubject;

/** The real editor on a real file: drawn, dragged, typed at, told what is wrong, undone, saved. */
class ProfileEditorTest extends OpenDesk {

	@Test
	void aDraggedPointGoesToTheHeightOfItsNeighbourExactly() {
		drag(pixel(30, 12), pixel(26.1, 18.2));
		assertEquals(26, section().outline().get(1).end().spot().x(), 0.6);
		assertEquals("Move Point", session.history().getUndoCommand().getLabel());
		drag(pixel(section().outline().get(1).end().spot().x(), section().outline().get(1).end().spot().y()), pixel(30.1, 20));
		assertEquals(mm(30), section().outline().get(1).end().x(), "drawn to the height of the next point");
		act(ActionFactory.UNDO);
		act(ActionFactory.UNDO);
		assertEquals(STRIP, section());
		assertFalse(editor.isDirty());
		act(ActionFactory.REDO);
		assertNotEquals(STRIP, section());
	}

	@Test
	void whileItIsDraggedOnlyTheDrawingChanges() {
		dragTo(pixel(30, 12), pixel(24, 20));
		assertEquals(STRIP, section());
		assertNotEquals(STRIP, session.shown());
		assertFalse(session.history().canUndo());
	}

	@Test
	void coordinatesAreTypedInAnySpelling() {
		select(new NodeKey.OfPoint(2));
		key(SWT.CR);
		assertEquals(List.of("30 mm", "12 mm"), List.of(fields()[0].getText(), fields()[1].getText()));
		type("1 1/4\"", "14,5");
		assertEquals(2, fields().length, "what is no length is refused in place");
		type("1 1/4\"", "14.5");
		assertEquals(0, fields().length);
		assertEquals(31.75, section().outline().get(1).end().spot().x());
		assertEquals(14.5, section().outline().get(1).end().spot().y());
	}

	@Test
	void linesBecomeArcsAndCurvesAndLinesAgain() {
		select(new NodeKey.OfSegment(1));
		key('a');
		ArcSegment arc = assertInstanceOf(ArcSegment.class, section().outline().get(1));
		assertTrue(section().box().projection().isMoreThan(mm(12)), "it bends out of the moulding");
		key('c');
		assertInstanceOf(CurveSegment.class, section().outline().get(1));
		assertEquals(arc.at(0.5).y(), section().outline().get(1).at(0.5).y(), 0.01);
		key('l');
		assertEquals(STRIP, section());
	}

	@Test
	void byTheKeyboardAlone() {
		tab(true);
		tab(true);
		assertEquals(new NodeKey.OfPoint(1), selected());
		key(SWT.ARROW_RIGHT);
		key(SWT.ARROW_UP, SWT.SHIFT);
		assertEquals(at(10, 13), section().outline().get(1).start());
		tab(false);
		assertEquals(new NodeKey.OfPoint(0), selected());
		key(SWT.PAGE_DOWN);
		assertEquals(new NodeKey.OfSegment(0), selected());
		key(SWT.PAGE_DOWN);
		key(SWT.INSERT);
		assertEquals(5, section().outline().size());
		assertEquals(new NodeKey.OfPoint(2), selected());
		act(ActionFactory.DELETE);
		assertEquals(4, section().outline().size());
		key('m');
		assertEquals("Turn Upside Down", session.history().getUndoCommand().getLabel());
		while (session.history().canUndo()) {
			act(ActionFactory.UNDO);
		}
		assertEquals(STRIP, section());
	}

	@Test
	void aSectionThatCrossesItselfIsSaidSoThereAndNotSaved() throws Exception {
		select(new NodeKey.OfPoint(1));
		key(SWT.CR);
		type("40", "6");
		assertEquals(1, session.faults().size());
		assertTrue(session.faults().getFirst().where().isPresent());
		assertTrue(notes().stream().anyMatch(note -> note.startsWith("The section crosses or touches itself at")), notes().toString());
		assertEquals(STRIP, session.sound(), "the last sound section stays");
		assertEquals(STRIP, new ProfileFile(file.getLocation().toPath()).read().section());
		act(ActionFactory.UNDO);
		assertEquals(List.of(), notes());
	}

	@Test
	void whatIsSavedIsReadAgain() throws Exception {
		select(new NodeKey.OfSegment(1));
		key('a');
		ProfileSection drawn = section();
		editor.doSave(null);
		assertFalse(editor.isDirty());
		page().closeEditor(editor, false);
		show();
		assertEquals(drawn, section());
	}

	@Test
	void theBackIsWhatIsChosen() {
		select(new NodeKey.OfSegment(0));
		key('b');
		assertEquals(List.of(new StraightSegment(at(0, 0), at(0, 12))), section().back());
		act(ActionFactory.UNDO);
		assertEquals(STRIP, section());
	}

	@Test
	void thePropertySheetGivesTheSameStepsNames() {
		IPropertySource sheet = Adapters.adapt(editor, SheetSubject.class).properties();
		Object name = sheet.getPropertyDescriptors()[0].getId();
		sheet.setPropertyValue(name, "Reading room strip");
		assertEquals("Reading room strip", editor.getTitle());
		assertEquals("Rename Profile", session.history().getUndoCommand().getLabel());
		select(new NodeKey.OfPoint(2));
		IPropertySource point = Adapters.adapt(viewer.getFocusEditPart(), SheetSubject.class).properties();
		point.setPropertyValue(point.getPropertyDescriptors()[1].getId(), mm(15));
		assertEquals(at(30, 15), section().outline().get(1).end());
		act(ActionFactory.UNDO);
		act(ActionFactory.UNDO);
		assertEquals("Strip", editor.getTitle());
	}

	private void select(NodeKey key) {
		viewer.select((EditPart) viewer.getEditPartRegistry().get(key));
		settle();
	}

	private Object selected() {
		return ((EditPart) viewer.getSelectedEditParts().getLast()).getModel();
	}

	private List<String> notes() {
		IFigure layer = LayerManager.Helper.find(viewer.getContents()).getLayer(LayerConstants.FEEDBACK_LAYER);
		return ((List<?>) layer.getChildren()).stream().filter(NoteFigure.class::isInstance)
				.flatMap(note -> ((NoteFigure) note).lines().stream()).toList();
	}
}
