// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

/** A standard observer: how much each wavelength adds to the three numbers of a colour. Source: ISO/CIE 11664-1. */
public enum Observer {

	/** The CIE 1931 observer, for colours seen under about 2 degrees. */
	TWO_DEGREES("2"), //$NON-NLS-1$
	/** The CIE 1964 observer, for large fields such as walls. */
	TEN_DEGREES("10"); //$NON-NLS-1$

	private final Spectrum x;
	private final Spectrum y;
	private final Spectrum z;

	Observer(String degrees) {
		x = CieTable.INSTANCE.spectrum("x" + degrees); //$NON-NLS-1$
		y = CieTable.INSTANCE.spectrum("y" + degrees); //$NON-NLS-1$
		z = CieTable.INSTANCE.spectrum("z" + degrees); //$NON-NLS-1$
	}

	/** Returns the colour of a perfect white under the light, Y = 100. */
	public Xyz white(Illuminant light) {
		return seen(Spectrum.flat(1), light);
	}

	/** Returns the colour of a surface under the light, scaled so that a perfect white has Y = 100 (ISO/CIE 11664-3, summed by 5 nm). */
	public Xyz seen(Spectrum reflectance, Illuminant light) {
		double scale = 100 / sum(light.power(), y);
		Spectrum stimulus = reflectance.times(light.power());
		return new Xyz(scale * sum(stimulus, x), scale * sum(stimulus, y), scale * sum(stimulus, z));
	}

	/** Returns the weights of the wavelengths in X, Y and Z of a reflectance under the light; row by row. */
	double[][] weights(Illuminant light) {
		double scale = 100 / sum(light.power(), y);
		double[][] weights = new double[3][Spectrum.SIZE];
		for (int i = 0; i < Spectrum.SIZE; i++) {
			double power = scale * light.power().get(i);
			weights[0][i] = power * x.get(i);
			weights[1][i] = power * y.get(i);
			weights[2][i] = power * z.get(i);
		}
		return weights;
	}

	private static double sum(Spectrum one, Spectrum other) {
		double sum = 0;
		for (int i = 0; i < Spectrum.SIZE; i++) {
			sum += one.get(i) * other.get(i);
		}
		return sum;
	}
}
