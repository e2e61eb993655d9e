// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The lights that are known without measuring them. Source: CIE 015:2018; ISO/CIE 11664-2 for A and D65. */
public final class Illuminants {

	/** Incandescent lamp. */
	public static final Illuminant A = new Illuminant("A", incandescent()); //$NON-NLS-1$

	/** Horizon daylight. */
	public static final Illuminant D50 = new Illuminant("D50", daylight(5000 * 1.4388 / 1.438)); //$NON-NLS-1$

	/** Noon daylight, the reference of all colours given without a spectrum. */
	public static final Illuminant D65 = new Illuminant("D65", daylight(6500 * 1.4388 / 1.438)); //$NON-NLS-1$

	/** Cool white fluorescent lamp. */
	public static final Illuminant FL2 = measured("FL2"); //$NON-NLS-1$

	/** Narrow-band fluorescent lamp of 4000 K. */
	public static final Illuminant FL11 = measured("FL11"); //$NON-NLS-1$

	/** Phosphor-converted white LED of about 4100 K. */
	public static final Illuminant LED_B3 = measured("LED-B3"); //$NON-NLS-1$

	private static final List<Illuminant> BUILT_IN = List.of(A, D50, D65, FL2, FL11, LED_B3);

	private static final Pattern TEMPERATURE = Pattern.compile("(\\d{4,5})\\s*[Kk]"); //$NON-NLS-1$
	private static final int COLDEST_DAYLIGHT = 4000;
	private static final int LOWEST = 1000;
	private static final int HIGHEST = 25000;

	private Illuminants() {
	}

	/** Returns the lights with a name of their own. */
	public static List<Illuminant> all() {
		return BUILT_IN;
	}

	/** Returns the light of an id as of {@link #all()}, or of a correlated colour temperature such as {@code 2700K}. */
	public static Optional<Illuminant> byId(String id) {
		Matcher temperature = TEMPERATURE.matcher(id.trim());
		if (temperature.matches()) {
			int kelvin = Integer.parseInt(temperature.group(1));
			return kelvin < LOWEST || kelvin > HIGHEST ? Optional.empty() : Optional.of(ofTemperature(kelvin));
		}
		return BUILT_IN.stream().filter(light -> light.id().equalsIgnoreCase(id.trim())).findFirst();
	}

	/**
	 * Returns a light of a correlated colour temperature, for a lamp of which only that is known: a glowing black body below 4000 K, daylight above.
	 * A real lamp of the same temperature can show colours otherwise; that is stated where the light is chosen.
	 *
	 * @throws IllegalArgumentException outside 1000 to 25000 K
	 */
	public static Illuminant ofTemperature(int kelvin) {
		if (kelvin < LOWEST || kelvin > HIGHEST) {
			throw new IllegalArgumentException("A colour temperature lies in 1000 to 25000 K, not at " + kelvin); //$NON-NLS-1$
		}
		return new Illuminant(kelvin + "K", kelvin < COLDEST_DAYLIGHT ? blackBody(kelvin) : daylight(kelvin)); //$NON-NLS-1$
	}

	private static Illuminant measured(String id) {
		return new Illuminant(id, CieTable.INSTANCE.spectrum(id));
	}

	/** Illuminant A by its defining formula, ISO/CIE 11664-2. */
	private static Spectrum incandescent() {
		return Spectrum.of(nm -> 100 * Math.pow(560 / nm, 5) * Math.expm1(1.435e7 / (2848 * 560)) / Math.expm1(1.435e7 / (2848 * nm)));
	}

	/** Planck's law relative to 560 nm, second radiation constant 1.438776877e7 nm K (CODATA 2018). */
	private static Spectrum blackBody(double kelvin) {
		double c2 = 1.438776877e7 / kelvin;
		return Spectrum.of(nm -> 100 * Math.pow(560 / nm, 5) * Math.expm1(c2 / 560) / Math.expm1(c2 / nm));
	}

	/** The daylight of a temperature, CIE 015:2018 section 4.1.2: chromaticity on the daylight locus, power from three components. */
	private static Spectrum daylight(double kelvin) {
		double t = 1000 / kelvin;
		double x = kelvin <= 7000 ? 0.244063 + t * (0.09911 + t * (2.9678 - 4.6070 * t))
				: 0.237040 + t * (0.24748 + t * (1.9018 - 2.0064 * t));
		double y = -3.000 * x * x + 2.870 * x - 0.275;
		double m = 0.0241 + 0.2562 * x - 0.7341 * y;
		double m1 = Math.round(1000 * (-1.3515 - 1.7703 * x + 5.9114 * y) / m) / 1000.0;
		double m2 = Math.round(1000 * (0.0300 - 31.4424 * x + 30.0717 * y) / m) / 1000.0;
		double[] s0 = CieTable.INSTANCE.column("S0"); //$NON-NLS-1$
		double[] s1 = CieTable.INSTANCE.column("S1"); //$NON-NLS-1$
		double[] s2 = CieTable.INSTANCE.column("S2"); //$NON-NLS-1$
		return Spectrum.of(nm -> {
			int i = (int) (nm - Spectrum.FIRST) / Spectrum.STEP;
			return Math.max(0, s0[i] + m1 * s1[i] + m2 * s2[i]);
		});
	}
}
