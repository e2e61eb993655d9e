// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.closure;

/**
 * One straight leg of a traverse.
 *
 * @param length  in any unit, above zero
 * @param azimuth direction in degrees, clockwise from north
 */
public record Course(double length, double azimuth) {

	/** Returns how far the leg goes north. */
	public double latitude() {
		return length * Math.cos(Math.toRadians(azimuth));
	}

	/** Returns how far the leg goes east. */
	public double departure() {
		return length * Math.sin(Math.toRadians(azimuth));
	}

	/** Returns the leg with another length. */
	Course withLength(double other) {
		return new Course(other, azimuth);
	}
}
