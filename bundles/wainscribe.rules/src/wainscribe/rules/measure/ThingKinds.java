// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.measure;

import java.util.EnumSet;
import java.util.Set;

import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Material;
import wainscribe.model.RoomUse;

/** Groups of surveyed things that rules treat alike. */
public final class ThingKinds {

	/** Fixtures that no moulding can run through. */
	private static final Set<FixtureType> SOLID = EnumSet.of(FixtureType.TOILET, FixtureType.BIDET, FixtureType.VANITY,
			FixtureType.BASIN, FixtureType.SINK, FixtureType.TUB, FixtureType.SHOWER, FixtureType.HEATER, FixtureType.RADIATOR,
			FixtureType.CABINET, FixtureType.RANGE, FixtureType.COOKTOP, FixtureType.HOOD, FixtureType.APPLIANCE,
			FixtureType.WASHER, FixtureType.FIREPLACE, FixtureType.MIRROR);
	private static final Set<FixtureType> ACCESSORY = EnumSet.of(FixtureType.TOWEL_BAR, FixtureType.TOWEL_RING,
			FixtureType.ROBE_HOOK, FixtureType.TP_HOLDER, FixtureType.SCONCE, FixtureType.GRAB_BAR);
	private static final Set<FixtureType> CONTROL = EnumSet.of(FixtureType.THERMOSTAT, FixtureType.KEYPAD);
	private static final Set<FixtureType> AIR = EnumSet.of(FixtureType.GRILLE, FixtureType.REGISTER);
	private static final Set<FixtureType> BATHING = EnumSet.of(FixtureType.TUB, FixtureType.SHOWER);
	private static final Set<FixtureType> BASIN = EnumSet.of(FixtureType.BASIN, FixtureType.VANITY, FixtureType.SINK);
	private static final Set<Material> NOT_BURNING = EnumSet.of(Material.PLASTER, Material.METAL);

	private ThingKinds() {
	}

	/** Tells whether moulding stops at it: a large fixture that is not marked as having trim behind it. */
	public static boolean stopsTrim(Fixture fixture) {
		return SOLID.contains(fixture.getType()) && !Boolean.TRUE.equals(fixture.getBehind());
	}

	/** Tells whether it takes up room: a large fixture, whether trim runs behind it or not, but no mirror. */
	public static boolean isLarge(Fixture fixture) {
		return SOLID.contains(fixture.getType()) && fixture.getType() != FixtureType.MIRROR;
	}

	/** Tells whether moulding stops at it: an electrical panel. */
	public static boolean stopsTrim(Box box) {
		return box.getType() == BoxType.PANEL;
	}

	/** Tells whether it is a bar, ring, hook, holder or light whose plate sits on the wall. */
	public static boolean isAccessory(Fixture fixture) {
		return ACCESSORY.contains(fixture.getType());
	}

	/** Tells whether it is a thermostat, keypad, intercom or bell. */
	public static boolean isControl(Fixture fixture) {
		return CONTROL.contains(fixture.getType());
	}

	/** Tells whether it is a supply or return grille. */
	public static boolean isAirGrille(Fixture fixture) {
		return AIR.contains(fixture.getType());
	}

	/** Tells whether it is a tub or a shower. */
	public static boolean isBathing(Fixture fixture) {
		return BATHING.contains(fixture.getType());
	}

	/** Tells whether it holds a basin or a sink. */
	public static boolean isBasin(Fixture fixture) {
		return BASIN.contains(fixture.getType());
	}

	/** Tells whether water splashes from it: tub, shower, basin, sink or vanity. */
	public static boolean isWet(Fixture fixture) {
		return isBathing(fixture) || isBasin(fixture);
	}

	/** Tells whether a room has a tub or a shower. */
	public static boolean isBathroom(RoomUse use) {
		return use == RoomUse.BATH_WITH_SHOWER || use == RoomUse.BATH_WITH_TUB;
	}

	/** Tells whether mouldings of the material burn; an unknown material counts as one that does. */
	public static boolean burns(Material material) {
		return !NOT_BURNING.contains(material);
	}
}
