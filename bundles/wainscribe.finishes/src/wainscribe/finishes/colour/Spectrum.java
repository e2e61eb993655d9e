// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * A quantity over the visible wavelengths, 380 to 780 nm in steps of 5 nm: the reflectance of a surface (0 to 1) or the relative power of a
 * light. Immutable.
 */
public final class Spectrum {

	/** The first wavelength in nm. */
	public static final int FIRST = 380;

	/** The last wavelength in nm. */
	public static final int LAST = 780;

	/** The distance of two samples in nm. */
	public static final int STEP = 5;

	/** The number of samples. */
	public static final int SIZE = (LAST - FIRST) / STEP + 1;

	private final double[] values;

	private Spectrum(double[] values) {
		this.values = values;
	}

	/**
	 * Returns the spectrum of the samples.
	 *
	 * @param values {@value #SIZE} finite numbers, not below 0
	 * @throws IllegalArgumentException where the count is another or a number is not finite or below 0
	 */
	public static Spectrum of(double... values) {
		if (values.length != SIZE) {
			throw new IllegalArgumentException("A spectrum has " + SIZE + " samples, not " + values.length); //$NON-NLS-1$ //$NON-NLS-2$
		}
		for (double value : values) {
			if (!(value >= 0) || Double.isInfinite(value)) {
				throw new IllegalArgumentException("A sample is a number not below 0, not " + value); //$NON-NLS-1$
			}
		}
		return new Spectrum(values.clone());
	}

	/** Returns the spectrum of a function of the wavelength in nm; see {@link #of(double...)} for its range. */
	public static Spectrum of(DoubleUnaryOperator valueAt) {
		double[] values = new double[SIZE];
		for (int i = 0; i < SIZE; i++) {
			values[i] = valueAt.applyAsDouble(wavelength(i));
		}
		return of(values);
	}

	/** Returns a spectrum that is alike at all wavelengths. */
	public static Spectrum flat(double value) {
		return of(wavelength -> value);
	}

	/** Returns the wavelength of a sample in nm. */
	public static int wavelength(int index) {
		return FIRST + index * STEP;
	}

	/** Returns a sample. */
	public double get(int index) {
		return values[index];
	}

	/** Returns the product sample by sample: the light that a surface sends back. */
	public Spectrum times(Spectrum other) {
		double[] product = new double[SIZE];
		for (int i = 0; i < SIZE; i++) {
			product[i] = values[i] * other.values[i];
		}
		return new Spectrum(product);
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Spectrum spectrum && Arrays.equals(values, spectrum.values);
	}

	@Override
	public int hashCode() {
		return Arrays.hashCode(values);
	}

	@Override
	public String toString() {
		return "Spectrum" + Arrays.toString(values); //$NON-NLS-1$
	}
}
