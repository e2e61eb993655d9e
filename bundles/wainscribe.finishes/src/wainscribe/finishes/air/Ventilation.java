// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.air;

/**
 * How the air of a room is renewed.
 *
 * @param leakage air changes an hour through doors and gaps
 * @param fan what the fan really moves, in cubic metres an hour; 0 without one
 * @param continuous whether the fan always runs; else in use and for {@code runOn} minutes after
 * @param runOn minutes of run-on
 */
public record Ventilation(double leakage, double fan, boolean continuous, int runOn) {

	/** What a fan moves of its rated flow behind a duct and a grille. Common practice. */
	public static final double EFFECTIVE = 0.7;

	/** Air changes an hour of a room with its door shut and no fan. Common practice. */
	public static final double LEAKAGE = 0.5;

	/** Refuses what is out of range. */
	public Ventilation {
		if (!(leakage >= 0) || !(fan >= 0) || runOn < 0) {
			throw new IllegalArgumentException("Flows and times are not below 0"); //$NON-NLS-1$
		}
	}

	/** Returns the air changes an hour while the fan runs or rests. */
	double changes(double volume, boolean running) {
		return leakage + (running ? fan / volume : 0);
	}
}
