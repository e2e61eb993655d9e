// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.suitability;

import java.util.Optional;

import wainscribe.finishes.air.MoistAir;
import wainscribe.finishes.air.MoistureDay;
import wainscribe.finishes.air.MoistureUse;
import wainscribe.finishes.air.Ventilation;
import wainscribe.model.FanMode;
import wainscribe.model.FanOutlet;
import wainscribe.model.Room;
import wainscribe.model.RoomUse;
import wainscribe.model.measure.Measure;

/**
 * The air of a room as surveyed, and what a day of use makes of it.
 *
 * @param air as measured, empty where temperature or humidity was not
 * @param surface temperature of the coldest wall face, empty where not measured
 * @param day the day of use, empty where air, surface or volume are not known
 * @param wetUse whether the use of the room is wet whatever was measured: bath, shower, laundry, kitchen
 */
public record RoomAir(Optional<MoistAir> air, Optional<Double> surface, Optional<MoistureDay> day, boolean wetUse) {

	/** Cubic metres an hour in a litre a second. */
	private static final double LITRES_A_SECOND = 3.6;
	private static final double WET_HOURS = 1;
	private static final double RISKY_HOURS = 12;

	/**
	 * Returns the air of a room.
	 *
	 * @param volume in cubic metres, empty where the walls do not close
	 */
	public static RoomAir of(Room room, Optional<Double> volume) {
		Optional<MoistAir> air = air(room);
		Optional<Double> surface = Optional.ofNullable(room.getSurfaceTemperature()).map(RoomAir::base);
		Optional<MoistureDay> day = air.isPresent() && surface.isPresent()
				? volume.filter(v -> v > 0).map(v -> MoistureDay.of(v, air.get(), surface.get(), use(room.getUse()), ventilation(room)))
				: Optional.empty();
		return new RoomAir(air, surface, day, isWet(room.getUse()));
	}

	/**
	 * Tells whether paints have to bear damp: by use, or because the coldest face is wet for an hour a day or at risk of mould for half of it (a
	 * day's stand-in for the monthly mean of 80 % of ISO 13788).
	 */
	public boolean isHumid() {
		return wetUse || day.map(d -> d.condensation() >= WET_HOURS || d.mouldRisk() >= RISKY_HOURS).orElse(false);
	}

	private static Optional<MoistAir> air(Room room) {
		if (room.getAir() == null || room.getHumidity() == null) {
			return Optional.empty();
		}
		double temperature = base(room.getAir());
		double humidity = base(room.getHumidity()) / 100;
		boolean real = temperature >= -60 && temperature <= 100 && humidity > 0 && humidity <= 1;
		return real ? Optional.of(new MoistAir(temperature, humidity)) : Optional.empty();
	}

	private static double base(Measure measure) {
		return measure.inBaseUnit().doubleValue();
	}

	private static boolean isWet(RoomUse use) {
		return use == RoomUse.BATH_WITH_SHOWER || use == RoomUse.BATH_WITH_TUB || use == RoomUse.LAUNDRY || use == RoomUse.KITCHEN;
	}

	private static MoistureUse use(RoomUse use) {
		return switch (use) {
		case BATH_WITH_SHOWER -> MoistureUse.bathing(MoistureUse.SHOWER);
		case BATH_WITH_TUB -> MoistureUse.bathing(MoistureUse.SHOWER / 2);
		case KITCHEN -> MoistureUse.cooking();
		case LAUNDRY -> MoistureUse.washing();
		case BEDROOM -> MoistureUse.people(2, 0, 7);
		case LIVING, DINING -> MoistureUse.people(3, 18 * 60, 4);
		default -> MoistureUse.people(1, 8 * 60, 1);
		};
	}

	private static Ventilation ventilation(Room room) {
		boolean outdoors = room.getFanOutlet() != FanOutlet.NONE && room.getFanOutlet() != FanOutlet.ATTIC;
		double fan = room.getFan() == null || !outdoors ? 0 : base(room.getFan()) * LITRES_A_SECOND * Ventilation.EFFECTIVE;
		return new Ventilation(Ventilation.LEAKAGE, fan, room.getFanMode() == FanMode.CONTINUOUS, 0);
	}
}
