// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.air;

/**
 * The humidity of a room over a day of use, once it repeats from day to day.
 * <p>
 * One well-mixed volume at one temperature: dv/dt = G/V - n (v - v0), solved exactly minute by minute, where v is vapour density, G the water
 * given, n the air changes and v0 the vapour of the air that comes in. Vapour beyond saturation condenses and is gone. Walls and towels that
 * take up vapour are left out, so peaks are on the cautious side and the drying after them on the short one. A surface counts as at risk of
 * mould where the air that touches it is at 80 % or more (ISO 13788:2012, critical surface humidity).
 *
 * @param peak highest relative humidity
 * @param mean mean relative humidity
 * @param condensation hours a day in which the surface is wet
 * @param mouldRisk hours a day in which the air at the surface is at 80 % or more
 */
public record MoistureDay(double peak, double mean, double condensation, double mouldRisk) {

	/** Relative humidity at a surface from which mould can grow. Source: ISO 13788:2012. */
	public static final double CRITICAL = 0.8;

	private static final int LONGEST = 30;
	private static final double SAME = 1e-9;

	/**
	 * Returns the day.
	 *
	 * @param volume of the room in cubic metres, above 0
	 * @param incoming the air that comes in, at the temperature of the room
	 * @param surface temperature of the coldest wall face
	 * @param use what gives water
	 * @param ventilation how the air is renewed
	 */
	public static MoistureDay of(double volume, MoistAir incoming, double surface, MoistureUse use, Ventilation ventilation) {
		if (!(volume > 0)) {
			throw new IllegalArgumentException("A room has a volume"); //$NON-NLS-1$
		}
		double vapour = incoming.vapourDensity();
		MoistureDay day = null;
		for (int i = 0; i < LONGEST; i++) {
			Count count = new Count(incoming.temperature(), surface);
			double start = vapour;
			for (int minute = 0; minute < MoistureUse.DAY; minute++) {
				vapour = count.saturated(next(vapour, minute, volume, incoming, use, ventilation));
				count.add(vapour);
			}
			day = count.day();
			if (Math.abs(vapour - start) < SAME) {
				break;
			}
		}
		return day;
	}

	private static double next(double vapour, int minute, double volume, MoistAir incoming, MoistureUse use, Ventilation ventilation) {
		boolean running = ventilation.continuous() || use.within(minute, ventilation.runOn());
		double changes = ventilation.changes(volume, running) / 60;
		double given = use.gramsAt(minute) / 1000 / volume;
		if (changes == 0) {
			return vapour + given;
		}
		double settled = incoming.vapourDensity() + given / changes;
		return settled + (vapour - settled) * Math.exp(-changes);
	}

	/** Counts the minutes of one day. */
	private static final class Count {

		private final double full;
		private final double wet;
		private double peak;
		private double sum;
		private int condensing;
		private int risky;

		Count(double temperature, double surface) {
			full = new MoistAir(temperature, 1).vapourDensity();
			wet = MoistAir.dryUpTo(temperature, surface);
		}

		double saturated(double vapour) {
			return Math.min(full, vapour);
		}

		void add(double vapour) {
			double humidity = vapour / full;
			peak = Math.max(peak, humidity);
			sum += humidity;
			condensing += humidity >= wet ? 1 : 0;
			risky += humidity >= CRITICAL * wet ? 1 : 0;
		}

		MoistureDay day() {
			return new MoistureDay(peak, sum / MoistureUse.DAY, condensing / 60.0, risky / 60.0);
		}
	}
}
