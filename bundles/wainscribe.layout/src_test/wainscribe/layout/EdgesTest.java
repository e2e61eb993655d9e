// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.model.FixtureType;
import wainscribe.model.HeatSource;
import wainscribe.model.Material;
import wainscribe.model.length.Length;

/** Rooms at the edge of what can be laid out. Expected values are derived from the definition of the layout problem. */
class EdgesTest {

	private static Rooms metric() {
		return Rooms.millimetres().height("2400").rail("900").gap("80");
	}

	private static List<RunLayout> runs(RoomLayout layout) {
		return layout.walls().get(0).runs();
	}

	@Test
	void aWallFullyCoveredByOpeningsHasNoRuns() {
		RoomLayout layout = metric().wall("A", "2000").door("0", "1000", "2100", "0").door("1000", "1000", "2100", "0").layout();
		assertEquals(0, layout.frames().count());
		assertTrue(layout.infeasible().isEmpty());
		assertEquals(0, layout.objective().plain());
	}

	@Test
	void aWallShorterThanAFrameSaysSo() {
		RoomLayout layout = metric().wall("A", "359").layout();
		assertEquals("Too short for a frame: 359 mm of 360 mm.", runs(layout).get(0).reason());
		assertTrue(layout.infeasible().isEmpty());
		assertEquals(1, metric().wall("A", "360").layout().frames().count());
	}

	@Test
	void aGapLargerThanTheWallLeavesItPlainWithAReason() {
		RoomLayout layout = metric().gap("1200").wall("A", "1000").layout();
		assertEquals(0, layout.frames().count());
		assertTrue(runs(layout).get(0).reason().startsWith("Too short for a frame"));
		PlainStretch refused = layout.infeasible().getFirst();
		assertEquals("No frame fits at a gap of 1200 mm.", refused.reason());
		assertEquals("The largest gap that leaves room for one is 250 mm.", refused.nearest(),
				"derived: the tier is 900 - 60 - 140 = 700 high, (700 - 200) / 2");
		assertEquals(1, metric().gap("250").wall("A", "1000").layout().frames().count());
	}

	@Test
	void aRailFarAboveTheCeilingIsNotTalkedDownToTheCeiling() {
		PlainStretch refused = metric().rail("7620").wall("A", "3000").layout().infeasible().getFirst();
		assertEquals("The rail at 7620 mm is above the ceiling at 2400 mm.", refused.reason());
		assertEquals("", refused.nearest());
	}

	@Test
	void aRailInTheBaseSaysSoOnEveryWallWhateverStandsThere() {
		RoomLayout layout = metric().rail("60").wall("A", "3000").outlet("500", "60", "70", "115").wall("B", "3000")
				.window("500", "100", "900", "900", "60").wall("C", "250").wall("D", "3000").layout();
		assertEquals(layout.walls().stream().map(WallLayout::wall).toList(), layout.infeasible().stream().map(PlainStretch::wall).toList());
		layout.infeasible().forEach(stretch -> assertEquals(
				"The rail from 0 mm to 60 mm lies in the base, which reaches up to 140 mm.", stretch.reason()));
	}

	@Test
	void twoOutletsThirtyApartAreHeldInOneField() {
		RoomLayout layout = metric().wall("A", "1000").outlet("400", "400", "70", "115").outlet("500", "400", "70", "115").layout();
		assertEquals(1, layout.frames().count());
		assertEquals(0, layout.objective().splits());
	}

	@Test
	void theWallPartsAtAnOutletOnlyAsTheLastResort() {
		RoomLayout layout = metric().wall("A", "1000").outlet("500", "195", "70", "115").layout();
		assertEquals(1, layout.objective().splits());
		assertEquals(0, layout.objective().plain());
		assertEquals(List.of(Length.ofMillimetres(500), Length.ofMillimetres(1000)), runs(layout).stream().map(RunLayout::x1).toList());
		assertEquals("Parted at the outlet at 500 mm. The outlet at 500 mm bars every number up to 3 frames at a gap of 80 mm.",
				runs(layout).get(0).reason());
		assertTrue(layout.alternatives().stream().anyMatch(other -> other.objective().splits() == 0), "a rail or gap without the split");
	}

	@Test
	void whatBarsEveryNumberOfFramesIsNamed() {
		RoomLayout layout = Rooms.inches().height("96").rail("32").gap("3").wall("A", "30").outlet("9", "8", "2 3/4", "4 1/2")
				.outlet("17", "8", "2 3/4", "4 1/2").layout();
		assertEquals(2, layout.objective().splits(), "both are made blockers, which leaves nothing that could take a frame");
		assertEquals("Parted at the outlet at 9\". The outlet at 9\" bars every number up to 2 frames at a gap of 3\"."
				+ " Too short for a frame: 9\" of 1' 1 7/8\".", runs(layout).get(0).reason());
	}

	@Test
	void aWindowInACornerTakesNoAnchorAndNoBay() {
		RoomLayout under = metric().wall("A", "2000").window("60", "1000", "800", "1000", "60").layout();
		assertTrue(under.frames().allMatch(frame -> frame.role() == FrameRole.RUN));
		assertEquals(0, under.objective().anchorsDropped());
		RoomLayout reaching = metric().wall("A", "2000").window("60", "700", "800", "1000", "60").layout();
		assertTrue(reaching.frames().allMatch(frame -> frame.role() == FrameRole.RUN));
		assertEquals(Length.ofMillimetres(920), runs(reaching).get(0).x0());
	}

	@Test
	void aWallOfSixtyMetresIsLaidOut() {
		Rooms rooms = Rooms.millimetres().height("2700").wall("A", "60000");
		for (int x = 1500; x < 60000; x += 3000) {
			rooms.outlet(String.valueOf(x), "300", "70", "115");
		}
		RoomLayout layout = rooms.layoutWithoutAdvice();
		assertEquals(0, layout.objective().plain());
		assertTrue(layout.frames().count() > 40);
	}

	@Test
	void aRailAboveTheCeilingIsRefused() {
		RoomLayout layout = metric().rail("2500").wall("A", "2000").layout();
		assertEquals("The rail at 2500 mm is above the ceiling at 2400 mm.", layout.infeasible().get(0).reason());
		assertEquals(0, layout.frames().count());
	}

	@Test
	void aRailThatHitsAPlateIsRefusedWithTheNearestHeights() {
		RoomLayout layout = metric().rail("900").wall("A", "2000").outlet("500", "850", "70", "115").layout();
		PlainStretch refused = layout.infeasible().get(0);
		assertEquals("The rail from 840 mm to 900 mm hits the outlet at 500 mm.", refused.reason());
		assertEquals("The rail at 837 mm or at 1038 mm would do.", refused.nearest(), "derived: 850 - 13 and 965 + 13 + 60");
		for (String clear : List.of("837", "1038")) {
			assertTrue(metric().rail(clear).wall("A", "2000").outlet("500", "850", "70", "115").layout().infeasible().isEmpty());
		}
	}

	@Test
	void aRailUnderTheBaseLeavesTheTierPlain() {
		RoomLayout layout = metric().rail("150").wall("A", "2000").layout();
		assertEquals(1, layout.objective().plain());
		assertEquals("The rail from 90 mm to 150 mm lies in the base, which reaches up to 140 mm.",
				layout.infeasible().get(0).reason());
	}

	@Test
	void aTierTooLowForFramesSaysSo() {
		RoomLayout layout = metric().rail("500").wall("A", "2000").layout();
		assertEquals("The tier is 300 mm high; a frame needs 360 mm.", layout.infeasible().get(0).reason());
	}

	@Test
	void unmeasuredHeightsStopOnlyTheTiersThatNeedThem() {
		assertTrue(Rooms.millimetres().wall("A", "2000").layout().infeasible().isEmpty());
		RoomLayout full = Rooms.millimetres().pattern("frames-to-ceiling").wall("A", "2000").layout();
		assertEquals("The ceiling height was not measured, so this tier has no height.", full.infeasible().get(0).reason());
		assertEquals(0, full.frames().count());
	}

	@Test
	void elementsWithoutMeasuresAndOddOnesDoNotStopTheRest() {
		RoomLayout layout = metric().wall("A", "2000").shape(wall -> {
			wall.setBow(Length.ofMillimetres(12));
			wall.setAngle(new BigDecimal("270"));
			wall.getOpenings().add(wainscribe.model.WainscribeFactory.eINSTANCE.createOpening());
			wall.getBoxes().add(wainscribe.model.WainscribeFactory.eINSTANCE.createBox());
			wainscribe.model.Fixture odd = wainscribe.model.WainscribeFactory.eINSTANCE.createFixture();
			odd.setWidth(Length.ofMillimetres(-5));
			wall.getFixtures().add(odd);
		}).wall("A", "1500").wall(null, "1500").layout();
		assertEquals(3, layout.walls().size());
		assertEquals(layout.frames().count(), layout.frames().map(FrameOutline::id).distinct().count());
		assertEquals(0, metric().layout().frames().count());
	}

	@Test
	void placedFramesAreKeptAndTheTierHoldsExactlyThose() {
		RoomLayout layout = metric().wall("A", "3000").placedFrame("300", "250", "500", "400").wall("B", "3000").layout();
		List<FrameOutline> frames = layout.walls().get(0).frames().toList();
		assertEquals(1, frames.size());
		assertEquals(FrameRole.PLACED, frames.get(0).role());
		assertEquals(Tier.LOWER, frames.get(0).tier());
		assertEquals(Length.ofMillimetres(300), frames.get(0).x());
		assertTrue(layout.walls().get(1).frames().count() > 0);
		RoomLayout above = metric().wall("A", "3000").placedFrame("300", "1250", "500", "400").layout();
		assertTrue(above.frames().anyMatch(frame -> frame.tier() == Tier.EXTRA));
		assertTrue(above.frames().anyMatch(frame -> frame.tier() == Tier.LOWER));
	}

	@Test
	void anElectricHeaterKeepsItsClearanceFromWhatBurns() {
		Rooms rooms = metric().wall("A", "4000").fixture(FixtureType.HEATER, "1500", "50", "800", "150",
				heater -> heater.setHeat(HeatSource.ELECTRIC));
		for (FrameOutline frame : rooms.layout().frames().toList()) {
			assertTrue(frame.right().compareTo(Length.ofMillimetres(1195)) <= 0 || frame.x().compareTo(Length.ofMillimetres(2605)) >= 0,
					frame.toString());
		}
		assertEquals(Length.ofMillimetres(1500 - 305 + 80), runs(rooms.layout()).get(0).x1(), "the gap completes the 305");
		rooms.brief(brief -> brief.setMaterial(Material.METAL));
		assertEquals(Length.ofMillimetres(1500), runs(rooms.layout()).get(0).x1());
	}

	@Test
	void nothingBurnsAboveARangeOrRoundAFire() {
		RoomLayout range = metric().pattern("frames-two-tier").wall("A", "3000").fixture(FixtureType.RANGE, "1000", "0", "700", "600").layout();
		assertTrue(range.frames().filter(frame -> frame.tier() == Tier.UPPER)
				.noneMatch(frame -> frame.x().isLessThan(Length.ofMillimetres(1700)) && frame.right().isMoreThan(Length.ofMillimetres(1000))),
				"600 + 762 reaches above the rail at 900");
		RoomLayout fire = metric().wall("A", "3000").fixture(FixtureType.FIREPLACE, "1000", "0", "900", "600", fireplace -> {
			fireplace.setOpeningX(Length.ofMillimetres(1010));
			fireplace.setOpeningWidth(Length.ofMillimetres(880));
			fireplace.setOpeningHeight(Length.ofMillimetres(600));
		}).layout();
		assertEquals(Length.ofMillimetres(1010 - 152 + 80), runs(fire).get(0).x1());
	}

	@Test
	void aWindowAboveTheRailAnchorsAFrameAndOneThatReachesBelowMakesABay() {
		RoomLayout anchored = metric().wall("A", "3000").window("1100", "1000", "800", "900", "70").layout();
		FrameOutline anchor = anchored.frames().filter(frame -> frame.role() == FrameRole.ANCHOR).findFirst().orElseThrow();
		assertEquals(Length.ofMillimetres(1030), anchor.x());
		assertEquals(Length.ofMillimetres(940), anchor.width());
		RoomLayout bay = metric().wall("A", "3000").window("1100", "700", "800", "900", "70").layout();
		FrameOutline under = bay.frames().filter(frame -> frame.role() == FrameRole.BAY).findFirst().orElseThrow();
		assertEquals(Tier.UNDER, under.tier());
		assertEquals(Length.ofMillimetres(1030), under.x());
		assertEquals(Length.ofMillimetres(630 - 80), under.top());
		assertEquals("A-B1", under.id());
	}

	@Test
	void bothTiersTakeTheSameNumberWhereRunsHaveTheSameEnds() {
		RoomLayout layout = metric().pattern("frames-two-tier").wall("A", "3000").wall("B", "2400").door("900", "800", "2100", "70").layout();
		for (WallLayout wall : layout.walls()) {
			for (RunLayout lower : wall.runs().stream().filter(run -> run.tier() == Tier.LOWER).toList()) {
				wall.runs().stream().filter(run -> run.tier() == Tier.UPPER && run.x0().equals(lower.x0()) && run.x1().equals(lower.x1()))
						.forEach(upper -> assertEquals(lower.frames().size(), upper.frames().size()));
			}
		}
		assertTrue(layout.frames().anyMatch(frame -> frame.tier() == Tier.UPPER));
	}

	@Test
	void aRoomThatIsPlainAtUsualGapsIsTriedWithWiderOnes() {
		RoomLayout layout = Rooms.millimetres().height("2400").rail("520").wall("A", "1900").layout();
		assertEquals(Length.ofMillimetres(60), layout.gap(),
				"derived: the tier is 320 high and a frame 200; at 60 four frames are 400 wide, twice their height");
		assertEquals(0, layout.objective().plain());
		assertTrue(layout.infeasible().isEmpty());
		assertEquals("No gap from 70 mm to 90 mm fills every stretch, so the gap is 60 mm.", runs(layout).get(0).reason());
	}

	@Test
	void whereARunIsPartedTheNearestGapWithoutThatIsShown() {
		Rooms rooms = Rooms.millimetres().height("2400").rail("900").wall("A", "560").outlet("95", "400", "70", "115");
		RoomLayout layout = rooms.layout();
		assertEquals(1, layout.objective().splits());
		Alternative other = layout.alternatives().stream().filter(shown -> shown.sentence().startsWith("A gap of ")).findFirst()
				.orElseThrow();
		assertEquals(Length.ofMillimetres(50), other.gap(),
				"derived: the field then begins at 50 + 32 = 82, 13 before the plate; clear of the plate, 165 + 13 = 178, is further");
		assertEquals(0, other.objective().splits());
	}

	@Test
	void noSideIsLongerThanTheLongestStock() {
		RoomLayout layout = metric().wall("A", "2000").brief(brief -> brief.getStock().add(Length.ofMillimetres(450))).layout();
		assertTrue(layout.frames().allMatch(frame -> frame.width().compareTo(Length.ofMillimetres(450)) <= 0));
		RoomLayout none = metric().wall("A", "2000").brief(brief -> brief.getStock().add(Length.ofMillimetres(300))).layout();
		assertEquals(1, none.objective().plain());
		assertEquals("No side may be longer than 300 mm, the longest length sold.", none.infeasible().get(0).reason());
	}
}
