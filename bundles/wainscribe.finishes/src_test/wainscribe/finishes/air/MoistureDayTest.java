// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class MoistureDayTest {

	private static final MoistAir HOUSE = new MoistAir(20, 0.5);

	@Test
	void withoutUseTheRoomIsAsTheHouse() {
		MoistureDay day = MoistureDay.of(10, HOUSE, 18, new MoistureUse(List.of()), new Ventilation(0.5, 0, false, 0));
		assertEquals(0.5, day.peak(), 1e-9);
		assertEquals(0.5, day.mean(), 1e-9);
		assertEquals(0, day.condensation());
	}

	/** Steady state by hand: G / (n V) added to the vapour that comes in; 30 g/h in 30 m3 at 0.5 changes add 2 g/m3. */
	@Test
	void steadyUseSettlesWhereTheBalanceSays() {
		MoistureUse steady = new MoistureUse(List.of(new MoistureUse.Spell(0, 1440, 720)));
		MoistureDay day = MoistureDay.of(30, HOUSE, 18, steady, new Ventilation(0.5, 0, false, 0));
		double expected = 0.5 + 0.002 / new MoistAir(20, 1).vapourDensity();
		assertEquals(expected, day.mean(), 1e-6);
	}

	@Test
	void aShowerInASmallRoomWetsAColdWall() {
		MoistureDay day = MoistureDay.of(10, HOUSE, 14, MoistureUse.bathing(MoistureUse.SHOWER), new Ventilation(0.5, 0, false, 0));
		assertEquals(1, day.peak(), 1e-9);
		assertTrue(day.condensation() > 1);
		assertTrue(day.mouldRisk() >= day.condensation());
	}

	/** A stronger fan, a longer run-on or a warmer wall never make it worse. */
	@Property(tries = 60)
	void whatHelpsHelps(@ForAll @DoubleRange(min = 5, max = 60) double volume, @ForAll @DoubleRange(min = 0, max = 100) double fan,
			@ForAll @DoubleRange(min = 8, max = 19) double surface) {
		MoistureUse use = MoistureUse.bathing(MoistureUse.SHOWER);
		MoistureDay now = MoistureDay.of(volume, HOUSE, surface, use, new Ventilation(0.5, fan, false, 0));
		MoistureDay stronger = MoistureDay.of(volume, HOUSE, surface, use, new Ventilation(0.5, fan + 20, false, 0));
		MoistureDay longer = MoistureDay.of(volume, HOUSE, surface, use, new Ventilation(0.5, fan, false, 20));
		MoistureDay warmer = MoistureDay.of(volume, HOUSE, surface + 1, use, new Ventilation(0.5, fan, false, 0));
		assertTrue(stronger.condensation() <= now.condensation() && stronger.peak() <= now.peak() + 1e-12);
		assertTrue(longer.mouldRisk() <= now.mouldRisk());
		assertTrue(warmer.condensation() <= now.condensation());
	}
}
