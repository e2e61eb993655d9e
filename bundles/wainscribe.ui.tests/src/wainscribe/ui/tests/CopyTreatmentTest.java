// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.jface.wizard.IWizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import wainscribe.commands.FramePlace;
import wainscribe.commands.PlaceFramesCommand;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.ui.elevation.treatment.CopyFramesWizard;
import wainscribe.ui.elevation.treatment.CopyTreatmentWizard;
import wainscribe.ui.elevation.treatment.TreatmentCopy;
import wainscribe.ui.session.RoomSession;

/** A treatment is copied to other rooms, frames placed by hand to other walls, each as one step. */
class CopyTreatmentTest {

	private static final String SURVEY = TestHome.SURVEY + """
		room,Hall,,,,,,108,,,use=hall;air=20C;rh=45%;surface=18C
		wall,Hall,A,,,,144,,,,stud=16
		wall,Hall,B,,,,120,,,,stud=16
		wall,Hall,C,,,,144,,,,stud=16
		wall,Hall,D,,,,120,,,,stud=16
		""";

	private TestHome home;
	private RoomSession study;
	private RoomSession hall;
	private WizardDialog dialog;
	private Shell shell;

	@BeforeEach
	void open() throws Exception {
		home = TestHome.of("copy-test", SURVEY);
		study = home.session().rooms().get(0);
		hall = home.session().rooms().get(1);
	}

	@AfterEach
	void close() throws Exception {
		dialog.close();
		home.close();
	}

	@Test
	void anotherRoomIsDecidedAlikeWrittenAndUndone() throws Exception {
		show(new CopyTreatmentWizard(study, new TreatmentCopy(TestHome.sessions(), file -> false)));
		assertFalse(Widgets.button(shell, "Finish").isEnabled(), "no room is chosen yet");
		check(0);
		Widgets.press(Widgets.button(shell, "Rail"));
		Widgets.press(Widgets.button(shell, "Finish"));
		assertEquals("frames-under-rail", hall.room().getBrief().getPattern());
		assertEquals(Length.ofInches(3), hall.room().getBrief().getGap());
		assertNull(hall.room().getBrief().getRail(), "the rail was not to be copied");
		assertTrue(hall.design().layout().frames().count() > 0);
		assertFalse(hall.isDirty(), "nobody has the room open, so it was written");
		assertEquals("Copy Treatment of Study", hall.commandStack().getUndoCommand().getLabel());
		assertFalse(study.isDirty());
		hall.commandStack().undo();
		assertNull(hall.room().getBrief());
	}

	@Test
	void aRoomThatIsOpenIsSavedByItsDesigner() throws Exception {
		RoomSession used = TestHome.sessions().openRoom(hall.file());
		show(new CopyTreatmentWizard(study, new TreatmentCopy(TestHome.sessions(), file -> true)));
		check(0);
		Widgets.press(Widgets.button(shell, "Finish"));
		assertEquals(Length.ofInches(38), used.room().getBrief().getRail());
		assertTrue(used.isDirty());
		TestHome.sessions().close(used);
	}

	@Test
	void framesOfAWallAreCopiedWhereTheyFit() throws Exception {
		Wall wall = study.room().getWalls().get(2);
		study.commandStack().execute(PlaceFramesCommand.locking(wall, List.of(place(10), place(70))));
		show(new CopyFramesWizard(study, wall));
		assertEquals("Wall B: they fit", table().getItem(1).getText());
		assertEquals("Wall A: A frame would meet door on wall A.", table().getItem(0).getText());
		check(0);
		assertFalse(Widgets.button(shell, "Finish").isEnabled());
		Widgets.press(Widgets.button(shell, "The middle of each wall"));
		assertEquals("Wall D: The frames reach from -2\" to 8' 2\"; wall D is only 10' long.", table().getItem(2).getText());
	}

	@Test
	void copiedFramesAreOneStep() throws Exception {
		Wall wall = study.room().getWalls().get(2);
		study.commandStack().execute(PlaceFramesCommand.locking(wall, List.of(place(20), place(64))));
		show(new CopyFramesWizard(study, wall));
		Widgets.press(Widgets.button(shell, "The middle of each wall"));
		check(1);
		check(2);
		Widgets.press(Widgets.button(shell, "Finish"));
		List<Outline> there = study.room().getWalls().get(1).getPlacedFrames().stream().map(Outlines::of).toList();
		assertEquals(List.of(place(8).outline(), place(52).outline()), there);
		assertEquals(2, study.room().getWalls().get(3).getPlacedFrames().size());
		assertEquals("Copy Frames of Wall C", study.commandStack().getUndoCommand().getLabel());
		study.commandStack().undo();
		assertTrue(study.room().getWalls().get(1).getPlacedFrames().isEmpty());
		assertTrue(study.room().getWalls().get(3).getPlacedFrames().isEmpty());
	}

	private void show(IWizard wizard) {
		dialog = new WizardDialog(TestHome.window().getShell(), wizard);
		dialog.setBlockOnOpen(false);
		dialog.open();
		shell = dialog.getShell();
		Widgets.settle();
	}

	private Table table() {
		return Widgets.find(shell, Table.class, table -> true);
	}

	/** Checks a row, or takes its check mark away, as a click does. */
	private void check(int index) {
		TableItem item = table().getItem(index);
		item.setChecked(!item.getChecked());
		Event event = new Event();
		event.item = item;
		event.detail = SWT.CHECK;
		table().notifyListeners(SWT.Selection, event);
		Widgets.settle();
	}

	private static FramePlace place(int x) {
		return new FramePlace(null, Outline.ofSize(in(x), in(8), in(40), in(24)));
	}

	private static Length in(int inches) {
		return Length.ofInches(inches);
	}
}
