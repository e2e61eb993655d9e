// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.clearance;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.HeatSource;
import wainscribe.model.Material;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;

/**
 * Says which surveyed things cut mouldings on a wall, and how far mouldings that burn keep from heat. Local codes and the
 * appliance's instructions decide.
 */
public final class Blockers {

	/** From an electric heater, all round; `heater-clear`: a fire department's and heater guides (12 in). */
	private static final Length FROM_HEATER = Length.ofMillimetres(305);
	/** Above a range or cooktop; `cooktop-above`: IRC M1901.1 (30 in). */
	private static final Length ABOVE_RANGE = Length.ofMillimetres(762);
	/** Round a fireplace opening; `fireplace-irc`: from memory, IRC R1001.11 (6 in). */
	private static final Length ROUND_FIRE = Length.ofMillimetres(152);
	private static final Set<Material> INCOMBUSTIBLE = EnumSet.of(Material.PLASTER, Material.METAL);
	private static final Set<FixtureType> LARGE = EnumSet.of(FixtureType.TOILET, FixtureType.BIDET, FixtureType.VANITY,
			FixtureType.BASIN, FixtureType.SINK, FixtureType.TUB, FixtureType.SHOWER, FixtureType.HEATER, FixtureType.RADIATOR,
			FixtureType.MIRROR, FixtureType.CABINET, FixtureType.RANGE, FixtureType.COOKTOP, FixtureType.HOOD,
			FixtureType.APPLIANCE, FixtureType.WASHER, FixtureType.FIREPLACE);

	private Blockers() {
	}

	/** Tells whether a moulding of a material can burn; one not recorded is taken to. */
	public static boolean isCombustible(Material material) {
		return !INCOMBUSTIBLE.contains(material);
	}

	/** Tells whether a box cuts mouldings: a distribution panel does, a plate does not. */
	public static boolean blocks(Box box) {
		return box.getType() == BoxType.PANEL;
	}

	/** Tells whether a fixture cuts mouldings: it is large, and trim does not run behind it. */
	public static boolean blocks(Fixture fixture) {
		return fixture.getType() != null && LARGE.contains(fixture.getType()) && !Boolean.TRUE.equals(fixture.getBehind());
	}

	/**
	 * Returns what a fixture that blocks keeps free: itself, and what its heat asks of mouldings that burn.
	 *
	 * @param fixture     a fixture with sizes that are not below zero
	 * @param combustible whether the mouldings can burn
	 */
	public static List<Kept> of(Fixture fixture, boolean combustible) {
		Outline outline = Outlines.of(fixture);
		List<Kept> kept = new ArrayList<>();
		kept.add(Kept.touching(outline));
		if (!combustible || fixture.getType() == null) {
			return kept;
		}
		switch (fixture.getType()) {
			case HEATER -> {
				if (fixture.getHeat() == HeatSource.ELECTRIC) {
					kept.add(Kept.allRound(outline, FROM_HEATER));
				}
			}
			case RANGE, COOKTOP -> kept.add(Kept.under(outline, ABOVE_RANGE));
			case FIREPLACE -> fire(fixture, outline).ifPresent(fire -> kept.add(Kept.allRound(fire, ROUND_FIRE)));
			default -> {
				// nothing else gives off heat that trim has to mind
			}
		}
		return kept;
	}

	private static Optional<Outline> fire(Fixture fixture, Outline whole) {
		Length width = fixture.getOpeningWidth();
		Length height = fixture.getOpeningHeight();
		if (width == null || height == null || width.signum() < 0 || height.signum() < 0) {
			return Optional.empty();
		}
		Length x = fixture.getOpeningX() == null ? whole.x0().plus(whole.width().minus(width).dividedBy(2))
				: fixture.getOpeningX();
		return Optional.of(Outline.ofSize(x, whole.y0(), width, height));
	}
}
