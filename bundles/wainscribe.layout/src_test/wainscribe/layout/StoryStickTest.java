// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

import org.junit.jupiter.api.Test;

import wainscribe.layout.setout.SpacerBlock;
import wainscribe.layout.setout.StoryStick;
import wainscribe.layout.setout.StoryStick.StickMark;
import wainscribe.model.Material;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

class StoryStickTest {

	private static WallLayout wall(Length length, Length gap, int frames) {
		Wall wall = WainscribeFactory.eINSTANCE.createWall();
		wall.setName("A");
		wall.setLength(length);
		Length width = length.minus(gap.times(frames + 1L)).dividedBy(frames);
		List<FrameOutline> outlines = new ArrayList<>();
		for (int i = 0; i < frames; i++) {
			outlines.add(new FrameOutline("A" + (i + 1), Tier.LOWER, FrameRole.RUN, gap.plus(width.plus(gap).times(i)), gap, width,
					Length.ofInches(20), Length.ZERO, Length.ZERO));
		}
		return new WallLayout(wall, List.of(new RunLayout(Tier.LOWER, Length.ZERO, length, Length.ZERO, Length.ofInches(30), outlines, "")));
	}

	/** Published worked example: 60 in run, three frames, 3 in gaps, 16 in frames (home-building magazine, wall-frame how-to). */
	@Test
	void thePublishedExampleIsOnTheStick() {
		StoryStick stick = StoryStick.along(wall(Length.ofInches(60), Length.ofInches(3), 3), LengthUnit.INCH);
		assertEquals(List.of(3L, 19L, 22L, 38L, 41L, 57L), stick.marks().stream()
				.map(mark -> mark.mark().onTape().units() / Length.UNITS_PER_INCH).toList());
		assertEquals(List.of("A1"), stick.marks().getFirst().names());
		assertEquals(Length.ofInches(60), stick.length());
	}

	/** 37 1/8 in and 143 1/2 in runs of a reference list: the fractions land between the marks (derived). */
	@Test
	void aMarkBetweenTwoOfTheTapeIsRoundedOnce() {
		StoryStick stick = StoryStick.along(wall(Length.ofInches(287, 2), Length.ofInches(11, 4), 7), LengthUnit.INCH);
		assertEquals(List.of(Length.ofInches(11, 4), Length.ofInches(161, 8), Length.ofInches(183, 8), Length.ofInches(643, 16)),
				stick.marks().stream().limit(4).map(mark -> mark.mark().onTape()).toList());
	}

	@Test
	void heightsAreMarkedOnceForATier() {
		StoryStick stick = StoryStick.up(wall(Length.ofInches(60), Length.ofInches(3), 3),
				new RailBand(Length.ofInches(32), Length.ofInches(34), Length.ofInches(1)), LengthUnit.INCH);
		assertEquals(List.of(3L, 23L, 32L, 34L), stick.marks().stream()
				.map(mark -> mark.mark().onTape().units() / Length.UNITS_PER_INCH).toList());
		assertEquals(List.of(List.of("lower"), List.of("lower"), List.of("rail"), List.of("rail")),
				stick.marks().stream().map(StickMark::names).toList());
	}

	/** Law: however many frames, no mark is off its exact place by more than half a mark of the tape. */
	@Property(tries = 300)
	void noMarkIsOffByMoreThanHalfAStep(@ForAll long seed, @ForAll boolean inches) {
		Random random = new Random(seed);
		LengthUnit units = inches ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
		Length length = new Length(Length.UNITS_PER_MILLIMETRE * 3000 + random.nextInt(80_000_000));
		StoryStick stick = StoryStick.along(wall(length, new Length(400_000 + random.nextInt(400_000)), 1 + random.nextInt(20)), units);
		for (StickMark mark : stick.marks()) {
			Length off = mark.mark().exact().minus(mark.mark().onTape()).abs();
			assertTrue(!off.times(2).isMoreThan(units.tapeMark()), mark::toString);
			assertTrue(mark.mark().onTape().isMultipleOf(units.tapeMark()));
		}
	}

	@Test
	void aRoomTakesAGapBlockAVerticalBlockAndARailStick() {
		WallLayout wall = wall(Length.ofInches(60), Length.ofInches(3), 3);
		RoomLayout layout = new RoomLayout(WainscribeFactory.eINSTANCE.createRoom(), "frames-under-rail",
				Material.MDF, Length.ofInches(3), Length.ofInches(7, 2),
				new RailBand(Length.ofInches(32), Length.ofInches(34), Length.ofInches(1)), new MouldingSection("", Length.ofInches(1),
						Length.ofInches(1, 2)),
				List.of(wall), new Objective(0, 0, 0, 0, 0, 0, BigDecimal.ZERO, 0, Length.ZERO), true, List.of(), List.of());
		List<SpacerBlock> blocks = SpacerBlock.of(layout, LengthUnit.INCH);
		assertEquals(List.of(new SpacerBlock(SpacerBlock.Use.GAP, Length.ofInches(3), Length.ofInches(3), List.of("A")),
				new SpacerBlock(SpacerBlock.Use.VERTICAL_GAP, Length.ofInches(7, 2), Length.ofInches(7, 2), List.of("A")),
				new SpacerBlock(SpacerBlock.Use.RAIL_HEIGHT, Length.ofInches(32), Length.ofInches(32), List.of("A"))), blocks);
	}
}
