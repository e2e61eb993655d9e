// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import wainscribe.model.PlacedFrame;
import wainscribe.model.ProfileUse;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.ReferenceLine;
import wainscribe.model.ProfileReference;
import wainscribe.model.Room;
import wainscribe.model.WainscribePackage.Literals;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;

/**
 * The law that every command keeps: executing changes the room, undo gives back the equal room in every place, redo the
 * equal changed room, a command that would change nothing refuses, and each has a name. Alone and interleaved.
 */
class CommandLawTest {

	private static final Map<String, Function<SampleHome, EditCommand>> COMMANDS = commands();

	@TestFactory
	Stream<DynamicTest> eachCommandAlone() {
		return COMMANDS.entrySet().stream().map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
			SampleHome home = new SampleHome();
			EditCommand command = entry.getValue().apply(home);
			Room before = EcoreUtil.copy(home.room);
			assertTrue(command.canExecute());
			command.execute();
			Room after = EcoreUtil.copy(home.room);
			assertFalse(equal(before, after), "changes something");
			assertFalse(command.canExecute(), "is executed once only");
			command.undo();
			assertEqual(before, home.room);
			command.redo();
			assertEqual(after, home.room);
			command.undo();
			assertEqual(before, home.room);
		}));
	}

	@TestFactory
	Stream<DynamicTest> eachCommandHasAName() {
		return COMMANDS.entrySet().stream().map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
			EditCommand command = entry.getValue().apply(new SampleHome());
			assertNotNull(command.getLabel());
			assertFalse(command.getLabel().isBlank());
			assertFalse(command.getLabel().contains("{"), command.getLabel());
			assertFalse(command.getAffectedObjects().isEmpty());
		}));
	}

	@TestFactory
	Stream<DynamicTest> doneAgainItChangesNothing() {
		return COMMANDS.entrySet().stream().filter(entry -> !entry.getKey().startsWith("add") && !entry.getKey().startsWith("lock"))
				.map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
					SampleHome home = new SampleHome();
					entry.getValue().apply(home).execute();
					EditCommand again = entry.getValue().apply(home);
					assertFalse(again.canExecute(), "a no-op refuses");
				}));
	}

	/** Any order of acts, undos and redos on one stack leads through the same states back and forth. */
	@Property(tries = 200)
	void interleaved(@ForAll long seed) {
		Random random = new Random(seed);
		SampleHome home = new SampleHome();
		BasicCommandStack stack = new BasicCommandStack();
		List<Function<SampleHome, EditCommand>> all = new ArrayList<>(COMMANDS.values());
		Deque<Room> undoable = new ArrayDeque<>();
		Deque<Room> redoable = new ArrayDeque<>();
		for (int step = 0; step < 25; step++) {
			int act = random.nextInt(4);
			Room now = EcoreUtil.copy(home.room);
			if (act == 0 && stack.canUndo()) {
				stack.undo();
				redoable.push(now);
				assertEqual(undoable.pop(), home.room);
			} else if (act == 1 && stack.canRedo()) {
				stack.redo();
				undoable.push(now);
				assertEqual(redoable.pop(), home.room);
			} else {
				EditCommand command = all.get(random.nextInt(all.size())).apply(home);
				if (command.canExecute()) {
					stack.execute(command);
					undoable.push(now);
					redoable.clear();
				}
			}
		}
		while (stack.canUndo()) {
			stack.undo();
			assertEqual(undoable.pop(), home.room);
		}
		assertTrue(undoable.isEmpty());
	}

	private static Map<String, Function<SampleHome, EditCommand>> commands() {
		Map<String, Function<SampleHome, EditCommand>> all = new LinkedHashMap<>();
		all.put("set a length", h -> new SetFeatureCommand(h.outlet, Literals.PLACED__WIDTH, in(9), "Width"));
		all.put("unset a length", h -> new SetFeatureCommand(h.window, Literals.PLACED__HEIGHT, null, "Height"));
		all.put("set a list", h -> new SetDecisionCommand(h.room, Literals.BRIEF__STOCK, List.of(in(96), in(144)), "Stock"));
		all.put("rename", h -> new RenameElementCommand(h.window, "north window"));
		all.put("move", h -> new MoveElementCommand(h.outlet, in(20), in(15)));
		all.put("move a fireplace", h -> new MoveElementCommand(h.fireplace, in(80), in(0)));
		all.put("resize", h -> new ResizeElementCommand(h.window, Outline.ofSize(in(38), in(30), in(40), in(48))));
		all.put("resize a plate", h -> new ResizeElementCommand(h.lightSwitch, Outline.ofSize(in(1), in(2), in(4), in(5))));
		all.put("add a box", h -> new AddElementCommand(h.wall, SampleHome.box("new")));
		all.put("remove the first box", h -> new RemoveElementCommand(h.outlet));
		all.put("remove the window", h -> new RemoveElementCommand(h.window));
		all.put("move the rail", h -> new MoveRailCommand(h.room, in(36)));
		all.put("set the gap", h -> new SetGapCommand(h.room, in(3)));
		all.put("set the vertical gap", h -> new SetVerticalGapCommand(h.room, in(4)));
		all.put("choose a pattern", h -> new ChoosePatternCommand(h.room, "frames-two-tier"));
		all.put("choose a profile", h -> new ChooseProfileCommand(h.room, ProfileUse.FRAME, "bead"));
		all.put("choose another profile", h -> new ChooseProfileCommand(h.room, ProfileUse.FRAME, "ogee"));
		all.put("copy the treatment", h -> new CopyTreatmentCommand(treated(), h.room, EnumSet.allOf(TreatmentPart.class)));
		all.put("copy frames", h -> new CopyFramesCommand(h.wall, h.other, List.of(place(3).outline(), place(40).outline())));
		all.put("add an axis", h -> AddLineCommand.axis(h.wall, line(WainscribeFactory.eINSTANCE.createAxis())));
		all.put("add a plumb guide", h -> AddLineCommand.plumb(h.wall, line(WainscribeFactory.eINSTANCE.createGuide())));
		all.put("add a level guide", h -> AddLineCommand.level(h.room, line(WainscribeFactory.eINSTANCE.createGuide())));
		all.put("move a guide", h -> new MoveLineCommand(h.guide, in(50)));
		all.put("remove a guide", h -> new RemoveLineCommand(h.guide));
		all.put("take down a base", h -> new TakeDownCommand(h.base, true));
		all.put("lock frames", h -> PlaceFramesCommand.locking(h.wall, List.of(place(3), place(22))));
		return all;
	}

	private static <T extends ReferenceLine> T line(T line) {
		line.setAt(in(48));
		return line;
	}

	private static Room treated() {
		SampleHome other = new SampleHome();
		other.ownBrief().setRail(in(40));
		ProfileReference bead = WainscribeFactory.eINSTANCE.createProfileReference();
		bead.setUse(ProfileUse.BASE);
		bead.setProfile("bead");
		other.room.getBrief().getProfiles().add(bead);
		return other.room;
	}

	private static FramePlace place(int x) {
		return new FramePlace("A-" + x, Outline.ofSize(in(x), in(9), in(16), in(20)));
	}

	private static Length in(long inches) {
		return Length.ofInches(inches);
	}

	static boolean equal(Room a, Room b) {
		return new EcoreUtil.EqualityHelper().equals(a, b);
	}

	static void assertEqual(Room expected, Room actual) {
		assertTrue(equal(expected, actual), "the equal room");
	}

	@TestFactory
	Stream<DynamicTest> commandsThatNeedPlacedFrames() {
		Map<String, Function<SampleHome, EditCommand>> all = new LinkedHashMap<>();
		all.put("move a placed frame", h -> {
			List<PlacedFrame> present = List.copyOf(h.wall.getPlacedFrames());
			return PlaceFramesCommand.moving(h.wall, present, List.of(place(3),
					new FramePlace(null, Outlines.of(present.get(1))), new FramePlace(null, Outlines.of(present.get(2)))));
		});
		all.put("release the first of three", h -> new ReleaseFramesCommand(h.wall, List.of(h.wall.getPlacedFrames().get(0))));
		all.put("release two not side by side", h -> new ReleaseFramesCommand(h.wall,
				List.of(h.wall.getPlacedFrames().get(0), h.wall.getPlacedFrames().get(2))));
		all.put("take back a decision", h -> new ChoosePatternCommand(h.room, null));
		return all.entrySet().stream().map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
			SampleHome home = new SampleHome();
			home.ownBrief();
			home.placed(5);
			home.placed(30);
			home.placed(60);
			EditCommand command = entry.getValue().apply(home);
			Room before = EcoreUtil.copy(home.room);
			assertTrue(command.canExecute());
			command.execute();
			Room after = EcoreUtil.copy(home.room);
			command.undo();
			assertEqual(before, home.room);
			command.redo();
			assertEqual(after, home.room);
			assertEquals(false, equal(before, after));
		}));
	}
}
