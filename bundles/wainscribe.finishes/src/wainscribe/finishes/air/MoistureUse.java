// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.air;

import java.util.List;

/**
 * Water that the use of a room gives to its air on a day.
 *
 * @param spells when and how much
 */
public record MoistureUse(List<Spell> spells) {

	/** Copies the list. */
	public MoistureUse {
		spells = List.copyOf(spells);
	}

	/**
	 * A spell of use.
	 *
	 * @param start minute of the day
	 * @param minutes how long it lasts
	 * @param grams water given in that time
	 */
	public record Spell(int start, int minutes, double grams) {

		/** Refuses what is out of a day. */
		public Spell {
			if (start < 0 || minutes < 1 || start + minutes > DAY || !(grams >= 0)) {
				throw new IllegalArgumentException("A spell lies within a day"); //$NON-NLS-1$
			}
		}

		boolean holds(int minute) {
			return minute >= start && minute < start + minutes;
		}
	}

	/** Minutes of a day. */
	static final int DAY = 24 * 60;

	/**
	 * Water from one shower, with drying of what it wets, in grams; a bath in a tub half of it. From memory of BS 5250 (0.2 kg a person and day
	 * for bathing and washing), taken twice for a hot shower: the cautious side. Editable by whoever builds the use.
	 */
	public static final double SHOWER = 400;

	/** Water that a person gives off, in grams an hour, awake at rest. From memory of BS 5250 (55 g/h). */
	public static final double PERSON = 55;

	/** Returns the use of a room with showers or baths: two in the morning, one in the evening. */
	public static MoistureUse bathing(double gramsEach) {
		return new MoistureUse(List.of(new Spell(7 * 60, 10, gramsEach), new Spell(7 * 60 + 30, 10, gramsEach), new Spell(21 * 60, 10, gramsEach)));
	}

	/** Returns the use of a kitchen: breakfast, midday, evening. From memory of BS 5250 (2 kg a day for electric cooking, most of it at the evening meal). */
	public static MoistureUse cooking() {
		return new MoistureUse(List.of(new Spell(7 * 60, 20, 300), new Spell(12 * 60, 30, 500), new Spell(18 * 60, 45, 1200)));
	}

	/** Returns the use of a laundry: one wash dried in the room over the evening and night would be 1500 g; here vented, 300 g. From memory. */
	public static MoistureUse washing() {
		return new MoistureUse(List.of(new Spell(9 * 60, 90, 300)));
	}

	/** Returns the use of a room where so many people stay for hours from a minute of the day. */
	public static MoistureUse people(int count, int start, int hours) {
		return new MoistureUse(List.of(new Spell(start, hours * 60, count * hours * PERSON)));
	}

	double gramsAt(int minute) {
		double grams = 0;
		for (Spell spell : spells) {
			grams += spell.holds(minute) ? spell.grams() / spell.minutes() : 0;
		}
		return grams;
	}

	/** Tells whether someone uses the room now or has within the last minutes: when a fan on demand runs. */
	boolean within(int minute, int runOn) {
		for (Spell spell : spells) {
			int since = Math.floorMod(minute - spell.start(), DAY);
			if (since < spell.minutes() + runOn) {
				return true;
			}
		}
		return false;
	}
}
