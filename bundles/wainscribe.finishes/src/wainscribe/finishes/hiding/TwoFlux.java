// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.hiding;

/**
 * A paint film by two-flux theory. Source: Kubelka 1948, J. Opt. Soc. Am. 38, 448, doi 10.1364/JOSA.38.000448.
 *
 * @param complete reflectance of a film so thick that nothing under it shows, above 0 and below 1
 * @param scatter scattering per micrometre of film, above 0
 */
public record TwoFlux(double complete, double scatter) {

	/** Reflectance of the white of a hiding chart. Source: ASTM D2805. */
	public static final double CHART_WHITE = 0.8;

	/** Contrast ratio from which the eye sees no ground. Source: ASTM D2805. */
	public static final double HIDDEN = 0.98;

	private static final int HALVINGS = 80;
	private static final double THICKEST = 5000;

	/** Refuses what is out of range. */
	public TwoFlux {
		if (!(complete > 0 && complete < 1) || !(scatter > 0 && Double.isFinite(scatter))) {
			throw new IllegalArgumentException("Reflectance lies above 0 and below 1, scattering above 0"); //$NON-NLS-1$
		}
	}

	/** Returns the ratio of absorption to scattering, K/S. */
	public double absorptionToScatter() {
		return (1 - complete) * (1 - complete) / (2 * complete);
	}

	/**
	 * Returns the reflectance of a film over a ground.
	 *
	 * @param film thickness in micrometres, 0 or more
	 * @param ground reflectance of the ground, 0 to 1
	 */
	public double over(double film, double ground) {
		if (film == 0) {
			return ground;
		}
		double a = (1 / complete + complete) / 2;
		double b = (1 / complete - complete) / 2;
		double coth = 1 / Math.tanh(b * scatter * film);
		return (1 - ground * (a - b * coth)) / (a - ground + b * coth);
	}

	/** Returns the contrast ratio: reflectance over black by that over the white of a chart. */
	public double contrastRatio(double film) {
		return over(film, 0) / over(film, CHART_WHITE);
	}

	/** Returns the film in micrometres that hides a chart, {@value #HIDDEN} contrast; by halving. */
	public double hidingFilm() {
		return filmFor(HIDDEN);
	}

	/** Returns the paint whose film of a thickness has the contrast ratio on a chart. */
	public static TwoFlux ofContrastRatio(double complete, double film, double ratio) {
		return new TwoFlux(complete, new TwoFlux(complete, 1).filmFor(ratio) / film);
	}

	/**
	 * Returns the number of coats until a ground is within a difference of reflectance of the finished colour.
	 *
	 * @param film dry film of one coat in micrometres
	 * @param ground reflectance now
	 * @param tolerance difference that no one sees, as reflectance
	 * @return 1 or more
	 */
	public int coats(double film, double ground, double tolerance) {
		double now = ground;
		for (int coats = 1; coats < MOST_COATS; coats++) {
			now = over(film, now);
			if (Math.abs(now - complete) <= tolerance) {
				return coats;
			}
		}
		return MOST_COATS;
	}

	private static final int MOST_COATS = 20;

	private double filmFor(double ratio) {
		double low = 0;
		double high = THICKEST / scatter;
		for (int i = 0; i < HALVINGS; i++) {
			double middle = (low + high) / 2;
			if (contrastRatio(middle) < ratio) {
				low = middle;
			} else {
				high = middle;
			}
		}
		return high;
	}
}
