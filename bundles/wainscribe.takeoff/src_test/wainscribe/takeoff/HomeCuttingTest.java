// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.takeoff.SampleRoom.frame;
import static wainscribe.takeoff.SampleRoom.mm;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import wainscribe.layout.MouldingSection;
import wainscribe.layout.RailBand;
import wainscribe.model.Material;
import wainscribe.model.PriceUnit;
import wainscribe.model.StoredOffcut;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.BuiltInProfiles;
import wainscribe.takeoff.cutting.BuyLine;
import wainscribe.takeoff.cutting.CuttingDecisions;
import wainscribe.takeoff.cutting.HomePlan;
import wainscribe.takeoff.cutting.PlanAcceptance;
import wainscribe.takeoff.cutting.PlannedBar;
import wainscribe.takeoff.cutting.PlannedPiece;

class HomeCuttingTest {

	private static SampleRoom oneFrame() {
		SampleRoom sample = new SampleRoom(2400);
		sample.wall("A", 3000, "90", frame("A1", 80, 220, 1200, 600, 0));
		return sample;
	}

	private static HomePlan plan(SampleRoom sample) {
		return new Takeoffs(BuiltInProfiles.catalogue()).stock(sample.home, List.of(sample.design())).plan();
	}

	private static StoredOffcut offcut(SampleRoom sample, String name, long length, Material material) {
		StoredOffcut offcut = WainscribeFactory.eINSTANCE.createStoredOffcut();
		offcut.setId("id-" + name);
		offcut.setName(name);
		offcut.setProfile("ogee-32");
		offcut.setMaterial(material);
		offcut.setLength(mm(length));
		sample.home.getOffcuts().add(offcut);
		return offcut;
	}

	@Test
	void everyPieceOfTheCutListIsPlannedOnceFromPricedLengths() {
		SampleRoom sample = oneFrame();
		sample.price("ogee-32", PriceUnit.LENGTH, "1", mm(2400), "7.50");
		sample.price("ogee-32", PriceUnit.LENGTH, "1", mm(3700), "14.90");
		HomePlan plan = plan(sample);
		assertEquals(new BigDecimal("14.90"), plan.cost());
		assertEquals(List.of("A1/bottom", "A1/left", "A1/right", "A1/top"),
				plan.bars().stream().flatMap(bar -> bar.pieces().stream()).map(PlannedPiece::label).sorted().toList());
		assertEquals(mm(3700 - 3600 - 4 * 3), plan.bars().getFirst().remainder());
		assertTrue(plan.unpriced().isEmpty() && plan.unplaced().isEmpty());
	}

	@Test
	void withoutAPriceTheFewestMetresAreBought() {
		SampleRoom sample = oneFrame();
		sample.stock = List.of(mm(2000), mm(3700));
		HomePlan plan = plan(sample);
		assertEquals(1, plan.unpriced().size());
		BuyLine line = plan.buys().getFirst();
		assertEquals(mm(3700), line.length());
		assertEquals(1, line.count());
		assertNull(line.price());
		assertEquals(0, plan.cost().signum());
		assertFalse(plan.isCostProved());
	}

	@Test
	void aLengthOfTheBriefIsTakenOnlyWhereEveryPricedOneIsTooShort() {
		SampleRoom sample = oneFrame();
		sample.stock = List.of(mm(3700));
		sample.price("ogee-32", PriceUnit.LENGTH, "1", mm(2400), "7.50");
		assertTrue(plan(sample).buys().stream().allMatch(line -> line.length().equals(mm(2400))));
		sample = oneFrame();
		sample.stock = List.of(mm(3700));
		sample.price("ogee-32", PriceUnit.LENGTH, "1", mm(1000), "1");
		assertEquals(1, plan(sample).unpriced().size());
		assertTrue(plan(sample).unplaced().isEmpty());
	}

	@Test
	void theHomesOffcutsAreUsedWhereProfileAndMaterialFit() {
		SampleRoom sample = oneFrame();
		sample.price("ogee-32", PriceUnit.LENGTH, "1", mm(2400), "7.50");
		offcut(sample, "O1", 1250, Material.MDF);
		offcut(sample, "O2", 2400, Material.POPLAR);
		HomePlan plan = plan(sample);
		// 1200 from the offcut, 1200 + 600 + 600 do not fit 2400 with kerfs: two more lengths, or 1200 + 1200 - kerf ... so 15.00
		assertEquals(List.of("O1"), plan.bars().stream().filter(bar -> !bar.isBought()).map(PlannedBar::label).toList());
		assertTrue(plan.bars().getFirst().pieces().getFirst().length().equals(mm(1200)), plan.bars().toString());
	}

	@Test
	void anAcceptedPlanUsesOffcutsUpKeepsLeftoversAndLeavesNothingToCut() {
		SampleRoom sample = oneFrame();
		sample.price("ogee-32", PriceUnit.LENGTH, "1", mm(2400), "7.50");
		sample.home.setShortestOffcut(mm(100));
		offcut(sample, "O7", 1250, Material.MDF);
		HomePlan plan = plan(sample);
		BigDecimal before = sample.takeoff().totals().net();
		PlanAcceptance acceptance = PlanAcceptance.of(sample.home, plan).orElseThrow();
		acceptance.applyTo(sample.home);
		List<Length> left = plan.bars().stream().map(PlannedBar::remainder).filter(rest -> !rest.isLessThan(mm(100))).toList();
		assertFalse(left.isEmpty());
		assertEquals(left, sample.home.getOffcuts().stream().map(StoredOffcut::getLength).toList());
		assertEquals("O8", sample.home.getOffcuts().getFirst().getName());
		assertTrue(sample.home.getOffcuts().getFirst().getOrigin().startsWith("left of 2400 mm after Reading room A1/"),
				sample.home.getOffcuts().getFirst().getOrigin());
		HomePlan next = plan(sample);
		assertTrue(next.bars().isEmpty());
		assertEquals(plan.bars().size(), next.accepted().size());
		assertEquals(before, sample.takeoff().totals().net());
		assertTrue(PlanAcceptance.of(sample.home, plan).isEmpty(), "its offcut is used up");
	}

	@Test
	void aFrameThatChangedAfterAcceptanceIsCutAnew() {
		SampleRoom sample = oneFrame();
		sample.price("ogee-32", PriceUnit.LENGTH, "1", mm(2400), "7.50");
		PlanAcceptance.of(sample.home, plan(sample)).orElseThrow().applyTo(sample.home);
		SampleRoom wider = new SampleRoom(2400);
		wider.wall("A", 3000, "90", frame("A1", 80, 220, 1300, 600, 0));
		HomePlan next = new Takeoffs(BuiltInProfiles.catalogue()).stock(sample.home, List.of(wider.design())).plan();
		assertEquals(List.of("A1/bottom", "A1/top"), Stream.of(next).flatMap(one -> one.bars().stream())
				.flatMap(bar -> bar.pieces().stream()).map(PlannedPiece::label).sorted().toList());
		assertEquals(2, next.accepted().stream().flatMap(bar -> bar.pieces().stream()).filter(piece -> piece.piece().isEmpty()).count());
	}

	@Test
	void aRunLongerThanEveryLengthComesInPartsAFrameSideNever() {
		SampleRoom sample = oneFrame();
		sample.rail = new RailBand(mm(840), mm(900), mm(20));
		sample.railSection = new MouldingSection("ogee-rail-64", mm(60), mm(20));
		sample.stock = List.of(mm(1100));
		HomePlan plan = plan(sample);
		List<String> labels = plan.bars().stream().flatMap(bar -> bar.pieces().stream()).map(PlannedPiece::label).toList();
		assertTrue(labels.containsAll(List.of("A/rail-1", "A/rail-2", "A/rail-3")), labels.toString());
		assertEquals(List.of("A1/top", "A1/bottom"), plan.unplaced().stream().map(PlannedPiece::label).sorted((a, b) -> b.compareTo(a)).toList());
	}

	@Test
	void decisionsOfTheHomeGoBeforeCommonPractice() {
		SampleRoom sample = oneFrame();
		assertEquals(new CuttingDecisions(mm(3), mm(0), mm(300)), CuttingDecisions.of(sample.home));
		sample.home.setUnits(LengthUnit.INCH);
		assertEquals(Length.ofInches(1, 8), CuttingDecisions.of(sample.home).kerf());
		sample.home.setKerf(mm(2));
		sample.home.setEndTrim(mm(10));
		sample.home.setShortestOffcut(mm(450));
		assertEquals(new CuttingDecisions(mm(2), mm(10), mm(450)), CuttingDecisions.of(sample.home));
	}
}
