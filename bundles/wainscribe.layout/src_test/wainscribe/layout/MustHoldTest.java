// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Random;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import wainscribe.model.Box;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;

/** What must hold in every layout, on random rooms with walls of up to six metres. */
class MustHoldTest {

	private static Rooms room(long seed) {
		return new RandomRoom(new Random(seed), 4, 6000).next();
	}

	private static RoomDesign design(Rooms rooms) {
		return Rooms.designer().withoutAdvice().design(rooms.home(), rooms.room());
	}

	@Property(tries = 400)
	void gapsAndWidthsSumToTheRunExactly(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
		RoomLayout layout = design(room(seed)).layout();
		for (WallLayout wall : layout.walls()) {
			for (RunLayout run : wall.runs()) {
				Length x = run.x0();
				for (FrameOutline frame : run.frames()) {
					assertEquals(layout.gap(), frame.x().minus(x), frame.id());
					x = frame.right();
				}
				if (!run.frames().isEmpty()) {
					assertEquals(layout.gap(), run.x1().minus(x));
					Length least = run.frames().stream().map(FrameOutline::width).min(Comparator.naturalOrder()).orElseThrow();
					Length most = run.frames().stream().map(FrameOutline::width).max(Comparator.naturalOrder()).orElseThrow();
					assertTrue(most.minus(least).units() <= 1);
				}
			}
		}
	}

	@Property(tries = 400)
	void verticalGapsAreExactAndFramesAreOfSize(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
		RoomDesign design = design(room(seed));
		RoomLayout layout = design.layout();
		Length least = Length.ofMillimetres(200).max(design.brief().frame().face().times(4));
		for (WallLayout wall : layout.walls()) {
			for (RunLayout run : wall.runs()) {
				for (FrameOutline frame : run.frames()) {
					assertEquals(layout.gapY(), frame.y().minus(run.y0()), frame.id());
					assertEquals(layout.gapY(), run.y1().minus(frame.top()), frame.id());
					assertTrue(!frame.width().isLessThan(least) && !frame.height().isLessThan(least), frame.id());
					design.brief().longestStock().ifPresent(longest -> assertTrue(
							!frame.width().isMoreThan(longest) && !frame.height().isMoreThan(longest), frame.id()));
				}
			}
		}
	}

	@Property(tries = 400)
	void stripsStayClearOfPlates(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
		RoomDesign design = design(room(seed));
		Length face = design.brief().frame().face();
		for (WallLayout wall : design.layout().walls()) {
			for (Box box : wall.wall().getBoxes()) {
				Outline grown = Outlines.of(box).grown(Length.ofMillimetres(13));
				wall.frames().forEach(frame -> {
					Outline outline = Outline.ofSize(frame.x(), frame.y(), frame.width(), frame.height());
					Outline field = new Outline(frame.x().plus(face), frame.y().plus(face), frame.right().minus(face), frame.top().minus(face));
					assertTrue(!outline.overlaps(grown) || field.contains(grown), () -> frame + " and " + box);
				});
			}
		}
	}

	@Property(tries = 400)
	void framesNeitherOverlapEachOtherNorAnOpening(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
		RoomDesign design = design(room(seed));
		for (WallLayout wall : design.layout().walls()) {
			List<Outline> frames = wall.frames()
					.map(frame -> Outline.ofSize(frame.x(), frame.y(), frame.width(), frame.height())).toList();
			for (int i = 0; i < frames.size(); i++) {
				for (int j = 0; j < i; j++) {
					assertTrue(!frames.get(i).overlaps(frames.get(j)));
				}
				Outline frame = frames.get(i);
				assertTrue(wall.wall().getOpenings().stream().map(Outlines::cased).noneMatch(frame::overlaps));
				assertTrue(!frame.x0().isLessThan(Length.ZERO) && !frame.x1().isMoreThan(wall.wall().getLength()));
			}
		}
	}

	@Property(tries = 100)
	void theSameRoomGivesTheSameDesign(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
		RoomLayout first = Rooms.designer().design(room(seed).home(), room(seed).room()).layout();
		RoomLayout second = Rooms.designer().design(room(seed).home(), room(seed).room()).layout();
		assertEquals(text(first), text(second));
	}

	private static String text(RoomLayout layout) {
		StringBuilder text = new StringBuilder().append(layout.gap()).append(layout.objective()).append(layout.proved());
		layout.walls().forEach(wall -> text.append(wall.runs()));
		layout.alternatives().forEach(other -> {
			text.append(other.sentence()).append(other.objective());
			other.walls().forEach(wall -> text.append(wall.runs()));
		});
		layout.infeasible().forEach(plain -> text.append(plain.x0()).append(plain.reason()).append(plain.nearest()));
		return text.toString();
	}

	@Property(tries = 200)
	void frameNamesAreUniqueAndPlainStretchesAreSaid(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
		RoomLayout layout = design(room(seed)).layout();
		assertEquals(layout.frames().count(), layout.frames().map(FrameOutline::id).distinct().count());
		assertEquals(layout.objective().frames(), layout.frames().count());
		assertTrue(layout.objective().plain() <= layout.infeasible().size());
		layout.infeasible().forEach(plain -> assertTrue(plain.reason().endsWith(".") || plain.reason().contains("gap"), plain.reason()));
	}
}
