// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.model.Box;
import wainscribe.model.FixtureType;
import wainscribe.model.CutBar;
import wainscribe.model.Home;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.StoredOffcut;
import wainscribe.model.PlacedFrame;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;

/** What single commands do to a room. */
class CommandEffectTest {

	private final SampleHome home = new SampleHome();

	@Test
	void theFireOpeningMovesWithItsFireplace() {
		new MoveElementCommand(home.fireplace, Length.ofInches(80), Length.ZERO).execute();
		assertEquals(Length.ofInches(88), home.fireplace.getOpeningX());
	}

	@Test
	void aPlateResizedByHandCountsAsMeasured() {
		new ResizeElementCommand(home.lightSwitch, Outline.ofSize(Length.ZERO, Length.ZERO, Length.ofInches(4),
				Length.ofInches(5))).execute();
		assertNull(home.lightSwitch.getGang());
	}

	@Test
	void aPlateMovedByResizingItsPlaceOnlyKeepsItsGangs() {
		new ResizeElementCommand(home.lightSwitch, Outline.ofSize(Length.ZERO, Length.ZERO, Length.ofInches(3),
				Length.ofInches(5))).execute();
		assertEquals(1, home.lightSwitch.getGang());
	}

	@Test
	void nothingIsSizedToNothing() {
		assertFalse(new ResizeElementCommand(home.window, Outline.ofSize(Length.ZERO, Length.ZERO, Length.ZERO,
				Length.ofInches(5))).canExecute());
	}

	@Test
	void movingTheRailLeavesTheHomeAsItIs() {
		Home whole = home.home;
		new MoveRailCommand(home.room, Length.ofInches(36)).execute();
		assertEquals(Length.ofInches(36), home.room.getBrief().getRail());
		assertNull(home.room.getBrief().getPattern());
		assertNull(whole.getBrief());
	}

	@Test
	void undoTakesAwayTheBriefThatTheStepMade() {
		MoveRailCommand command = new MoveRailCommand(home.room, Length.ofInches(36));
		command.execute();
		command.undo();
		assertNull(home.room.getBrief());
	}

	@Test
	void whatIsAddedGetsAnIdAndKeepsItThroughRedo() {
		Box box = SampleHome.box("new");
		AddElementCommand command = new AddElementCommand(home.other, box);
		command.execute();
		String id = box.getId();
		command.undo();
		command.redo();
		assertNotNull(id);
		assertEquals(id, home.other.getBoxes().get(0).getId());
		assertSame(box, command.getResult().iterator().next());
	}

	@Test
	void lockingPlacesEveryFrameOfTheTierWhereItStands() {
		Outline first = Outline.ofSize(Length.ofInches(3), Length.ofInches(9), Length.ofInches(16), Length.ofInches(20));
		Outline second = Outline.ofSize(Length.ofInches(22), Length.ofInches(9), Length.ofInches(16), Length.ofInches(20));
		PlaceFramesCommand.locking(home.wall, List.of(new FramePlace("A1", first), new FramePlace("A2", second))).execute();
		assertEquals(List.of(first, second), home.wall.getPlacedFrames().stream().map(Outlines::of).toList());
		assertEquals("A2", home.wall.getPlacedFrames().get(1).getName());
	}

	@Test
	void movingOnePlacedFrameKeepsItsIdentity() {
		PlacedFrame frame = home.placed(5);
		Outline place = Outline.ofSize(Length.ofInches(6), Length.ofInches(9), Length.ofInches(16), Length.ofInches(20));
		PlaceFramesCommand.moving(home.wall, List.of(frame), List.of(new FramePlace(null, place))).execute();
		assertSame(frame, home.wall.getPlacedFrames().get(0));
		assertEquals(place, Outlines.of(frame));
	}

	@Test
	void stepsAreNamedInTradeWords() {
		assertEquals("Move outlet", new MoveElementCommand(home.outlet, Length.ZERO, Length.ZERO).getLabel());
		assertEquals("Remove window", new RemoveElementCommand(home.window).getLabel());
		assertEquals("Change Width", new SetFeatureCommand(home.window,
				wainscribe.model.WainscribePackage.Literals.PLACED__WIDTH, null, "Width").getLabel());
	}

	@Test
	void everyKindOfFixtureHasItsWord() {
		for (FixtureType type : FixtureType.values()) {
			assertFalse(ElementWords.of(type).equals("fixture"), type.getLiteral());
		}
	}

	@Test
	void anAcceptedPlanUsesOffcutsUpAndKeepsLeftoversUntilItIsUndone() {
		Home whole = home.home;
		StoredOffcut old = WainscribeFactory.eINSTANCE.createStoredOffcut();
		StoredOffcut other = WainscribeFactory.eINSTANCE.createStoredOffcut();
		StoredOffcut left = WainscribeFactory.eINSTANCE.createStoredOffcut();
		CutBar bar = WainscribeFactory.eINSTANCE.createCutBar();
		whole.getOffcuts().addAll(List.of(old, other));
		AcceptCuttingPlanCommand command = new AcceptCuttingPlanCommand(whole, List.of(old), List.of(left), List.of(bar));
		assertTrue(command.canExecute());
		command.execute();
		assertEquals(List.of(other, left), whole.getOffcuts());
		assertEquals(List.of(bar), whole.getCutBars());
		command.undo();
		assertEquals(List.of(old, other), whole.getOffcuts());
		assertTrue(whole.getCutBars().isEmpty());
		command.redo();
		assertEquals(List.of(other, left), whole.getOffcuts());
		assertFalse(new AcceptCuttingPlanCommand(whole, List.of(old), List.of(), List.of(bar)).canExecute(), "the offcut is used up");
		assertFalse(new AcceptCuttingPlanCommand(whole, List.of(), List.of(), List.of()).canExecute(), "nothing to keep");
	}
}
