// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

/** CIE tristimulus values; a perfect white has Y = 100. */
public record Xyz(double x, double y, double z) {

	/** Refuses what is no number. */
	public Xyz {
		if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
			throw new IllegalArgumentException("Tristimulus values are finite numbers"); //$NON-NLS-1$
		}
	}

	/** Returns the chromaticity x, or 0 for black. */
	public double chromaticityX() {
		double sum = x + y + z;
		return sum == 0 ? 0 : x / sum;
	}

	/** Returns the chromaticity y, or 0 for black. */
	public double chromaticityY() {
		double sum = x + y + z;
		return sum == 0 ? 0 : y / sum;
	}

	/** Returns the colour at another brightness of the same light. */
	public Xyz times(double factor) {
		return new Xyz(x * factor, y * factor, z * factor);
	}
}
