// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.air;

/**
 * Air of a temperature and a relative humidity. Source: ASHRAE Handbook, Fundamentals 2017, chapter 1.
 *
 * @param temperature in degrees Celsius, -60 to 100
 * @param humidity relative humidity over water (over ice below 0 degrees), above 0 up to 1
 */
public record MoistAir(double temperature, double humidity) {

	private static final double KELVIN = 273.15;
	/** Gas constant of water vapour in J/(kg K). */
	private static final double VAPOUR_GAS = 461.5;
	private static final double COLDEST = -100;
	private static final int HALVINGS = 60;

	/** Refuses what is out of range. */
	public MoistAir {
		if (!(temperature >= -60 && temperature <= 100)) {
			throw new IllegalArgumentException("The temperature of air lies in -60 to 100 degrees, not at " + temperature); //$NON-NLS-1$
		}
		if (!(humidity > 0 && humidity <= 1)) {
			throw new IllegalArgumentException("Relative humidity lies above 0 and up to 1, not at " + humidity); //$NON-NLS-1$
		}
	}

	/** Returns the air of a temperature that holds so much vapour, at most saturated. */
	public static MoistAir ofVapourPressure(double temperature, double pressure) {
		return new MoistAir(temperature, Math.min(1, pressure / saturationPressure(temperature)));
	}

	/**
	 * Returns the pressure of saturated vapour in Pascal, over ice below 0 degrees. Source: ASHRAE Fundamentals 2017, chapter 1, equations 5 and 6
	 * (Hyland, Wexler 1983).
	 */
	public static double saturationPressure(double temperature) {
		double t = temperature + KELVIN;
		if (temperature < 0) {
			return Math.exp(-5.6745359e3 / t + 6.3925247 + t * (-9.6778430e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - t * 9.4840240e-13)))
					+ 4.1635019 * Math.log(t));
		}
		return Math.exp(-5.8002206e3 / t + 1.3914993 + t * (-4.8640239e-2 + t * (4.1764768e-5 - t * 1.4452093e-8)) + 6.5459673 * Math.log(t));
	}

	/** Returns the pressure of the vapour in Pascal. */
	public double vapourPressure() {
		return humidity * saturationPressure(temperature);
	}

	/** Returns the vapour held, in kg per cubic metre. */
	public double vapourDensity() {
		return vapourPressure() / (VAPOUR_GAS * (temperature + KELVIN));
	}

	/** Returns the vapour held, in kg per kg of dry air, at an air pressure in Pascal. */
	public double humidityRatio(double pressure) {
		return 0.621945 * vapourPressure() / (pressure - vapourPressure());
	}

	/** Returns the temperature at which the vapour would wet a surface (frost it below 0 degrees); by halving, to a billionth of a degree. */
	public double dewPoint() {
		double low = COLDEST;
		double high = temperature;
		for (int i = 0; i < HALVINGS; i++) {
			double middle = (low + high) / 2;
			if (saturationPressure(middle) < vapourPressure()) {
				low = middle;
			} else {
				high = middle;
			}
		}
		return high;
	}

	/** Returns the relative humidity of the air that touches a surface, 1 where it wets it. */
	public double humidityAt(double surface) {
		return Math.min(1, vapourPressure() / saturationPressure(surface));
	}

	/** Returns the highest relative humidity of room air at which a surface stays dry. */
	public static double dryUpTo(double temperature, double surface) {
		return Math.min(1, saturationPressure(surface) / saturationPressure(temperature));
	}
}
