// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import wainscribe.layout.clearance.Blockers;
import wainscribe.model.Box;
import wainscribe.model.Fixture;

/** What a surveyed thing means to a run of frames. All distances are common practice but those that a rule cites. */
public enum ThingRole {
	/** Cuts a run. */
	BLOCKER(0, 0),
	/** A cover plate: strips keep 13 mm off it, 25 mm is wished. */
	PLATE(13, 25),
	/** A supply or return grille: strips keep 25 mm off it. */
	GRILLE(25, 25),
	/** A thermostat or the like: strips may not touch it, 25 mm is wished. */
	CONTROL(0, 25),
	/** A bar, ring, holder, hook, bracket or lamp: strips may not touch it, 10 mm is wished. */
	ACCESSORY(0, 10),
	/** Nothing that trim has to mind. */
	NONE(0, 0);

	private static final long UNITS = 8000;

	private final long margin;
	private final long warning;

	ThingRole(long margin, long warning) {
		this.margin = margin * UNITS;
		this.warning = warning * UNITS;
	}

	/** Returns the least distance of a strip. */
	public long margin() {
		return margin;
	}

	/** Returns the distance under which a strip is near. */
	long warning() {
		return warning;
	}

	public boolean isIsland() {
		return this != BLOCKER && this != NONE;
	}

	/** Returns the role of a box; a distribution panel is large and cuts a run like a fixture. */
	public static ThingRole of(Box box) {
		return Blockers.blocks(box) ? BLOCKER : PLATE;
	}

	/** Returns the role of a fixture; one that trim runs behind cuts nothing. */
	public static ThingRole of(Fixture fixture) {
		if (fixture.getType() == null) {
			return NONE;
		}
		if (Blockers.blocks(fixture)) {
			return BLOCKER;
		}
		return switch (fixture.getType()) {
		case REGISTER, GRILLE -> GRILLE;
		case THERMOSTAT, KEYPAD -> CONTROL;
		case TOWEL_BAR, TOWEL_RING, ROBE_HOOK, TP_HOLDER, SCONCE, GRAB_BAR -> ACCESSORY;
		default -> NONE;
		};
	}
}
