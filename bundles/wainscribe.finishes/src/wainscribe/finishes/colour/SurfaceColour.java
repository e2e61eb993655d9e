// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

import java.util.Objects;

/** The colour of a surface as it is known: by its spectrum, in CIELAB, or as a screen colour. */
public sealed interface SurfaceColour {

	/** Returns CIELAB under D65 for the 2 degree observer. */
	Lab lab();

	/**
	 * Returns the reflectance over the wavelengths: the measured one, else the smoothest that gives the colour, an estimate.
	 */
	Spectrum reflectance();

	/**
	 * Returns the light reflectance value, 0 to 100: luminous Y under D65. With a spectrum for the 10 degree observer as BS 8493 asks; else for
	 * the 2 degree one, which is all a colour code tells.
	 */
	double lightReflectance();

	/** A colour measured by wavelengths. */
	record Measured(Spectrum reflectance) implements SurfaceColour {

		/** Refuses nulls. */
		public Measured {
			Objects.requireNonNull(reflectance);
		}

		@Override
		public Lab lab() {
			return Lab.of(Observer.TWO_DEGREES.seen(reflectance, Illuminants.D65), Observer.TWO_DEGREES.white(Illuminants.D65));
		}

		@Override
		public double lightReflectance() {
			return Observer.TEN_DEGREES.seen(reflectance, Illuminants.D65).y();
		}
	}

	/** A colour given in CIELAB. */
	record Given(Lab lab) implements SurfaceColour {

		/** Refuses nulls and a lightness outside 0 to 100. */
		public Given {
			Objects.requireNonNull(lab);
			if (lab.lightness() < 0 || lab.lightness() > 100) {
				throw new IllegalArgumentException("L* lies in 0 to 100, not at " + lab.lightness()); //$NON-NLS-1$
			}
		}

		@Override
		public Spectrum reflectance() {
			return new SmoothestReflectance(Observer.TWO_DEGREES).of(lab.toXyz(Observer.TWO_DEGREES.white(Illuminants.D65)));
		}

		@Override
		public double lightReflectance() {
			return lab.toXyz(Srgb.WHITE).y();
		}
	}

	/** A colour of the screen. */
	record Screen(Srgb code) implements SurfaceColour {

		/** Refuses nulls. */
		public Screen {
			Objects.requireNonNull(code);
		}

		@Override
		public Lab lab() {
			return code.toLab();
		}

		@Override
		public Spectrum reflectance() {
			return new Given(clippedLab()).reflectance();
		}

		@Override
		public double lightReflectance() {
			return code.toXyz().y();
		}

		/** White rounds to a hair above 100. */
		private Lab clippedLab() {
			Lab lab = lab();
			return new Lab(Math.clamp(lab.lightness(), 0, 100), lab.a(), lab.b());
		}
	}
}
