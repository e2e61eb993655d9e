// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;

import org.junit.jupiter.api.Test;
import wainscribe.finishes.surface.PreparationStep.Kind;
import wainscribe.model.Binder;
import wainscribe.model.GlossLevel;
import wainscribe.model.Material;
import wainscribe.model.Primer;
import wainscribe.model.Soundness;
import wainscribe.model.Substrate;

class PreparationTest {

	@Test
	void aSoundMattWallIsWashedAndFilled() {
		assertEquals(List.of(Kind.CLEAN, Kind.FILL), kinds(surface(GlossLevel.G2, Binder.ACRYLIC, Soundness.YES, false, 1995), Binder.ACRYLIC));
	}

	@Test
	void oldGlossIsCleanedDulledTriedAndPrimedInThisOrder() {
		assertEquals(List.of(Kind.CLEAN, Kind.FILL, Kind.SAND, Kind.TEST_PATCH, Kind.PRIME),
				kinds(surface(GlossLevel.G6, Binder.ALKYD, Soundness.YES, false, 1995), Binder.ACRYLIC));
	}

	@Test
	void unknownPaintIsTestedFirst() {
		assertEquals(Kind.TEST, kinds(surface(GlossLevel.G2, Binder.UNKNOWN, Soundness.YES, false, 1995), Binder.ACRYLIC).getFirst());
	}

	@Test
	void disturbingOldPaintStopsTheJob() {
		List<PreparationStep> steps = Preparation.of(surface(GlossLevel.G2, Binder.ALKYD, Soundness.YES, true, 1926), Binder.ACRYLIC, Primer.NONE);
		assertEquals(Kind.STOP, steps.getFirst().kind());
		assertTrue(steps.getFirst().text().contains("1926") && steps.getFirst().text().contains("certified"));
		assertFalse(kinds(surface(GlossLevel.G2, Binder.ALKYD, Soundness.YES, true, 1985), Binder.ACRYLIC).contains(Kind.STOP));
	}

	@Test
	void anUnknownYearCountsAsOld() {
		OldSurface old = new OldSurface(GlossLevel.G2, Binder.ACRYLIC, Substrate.PLASTER, Soundness.NO, true, false, OptionalInt.empty(), 1978);
		assertEquals(2, Preparation.of(old, Binder.ACRYLIC, Primer.NONE).stream().filter(step -> step.kind() == Kind.STOP).count());
	}

	@Test
	void chalkAndTileArePrimed() {
		OldSurface chalk = surface(GlossLevel.G1, Binder.LIMEWASH, Soundness.CHALKING, false, 1995);
		assertEquals(List.of(Kind.CLEAN, Kind.STRIP, Kind.STRIP, Kind.FILL, Kind.PRIME), kinds(chalk, Binder.ACRYLIC));
		OldSurface tile = new OldSurface(GlossLevel.G7, Binder.UNRECORDED, Substrate.TILE, Soundness.YES, false, false, OptionalInt.of(1995), 1978);
		assertEquals(1, kinds(tile, Binder.ACRYLIC).stream().filter(Kind.PRIME::equals).count());
	}

	@Test
	void boardEdgesAreSealed() {
		List<PreparationStep> steps = Preparation.ofMoulding(Material.MDF);
		assertTrue(steps.getLast().text().contains("edge") && steps.getLast().kind() == Kind.PRIME);
	}

	private static List<Kind> kinds(OldSurface old, Binder binder) {
		return Preparation.of(old, binder, Primer.NONE).stream().map(PreparationStep::kind).toList();
	}

	private static OldSurface surface(GlossLevel gloss, Binder binder, Soundness soundness, boolean disturbed, int built) {
		return new OldSurface(gloss, binder, Substrate.DRYWALL, soundness, false, disturbed, OptionalInt.of(built), 1978);
	}
}
