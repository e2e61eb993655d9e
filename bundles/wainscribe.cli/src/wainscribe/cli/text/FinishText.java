// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.text;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import wainscribe.finishes.air.MoistAir;
import wainscribe.finishes.air.MoistureDay;
import wainscribe.finishes.coating.CoatingSystem;
import wainscribe.finishes.surface.PreparationStep;
import wainscribe.model.Paint;
import wainscribe.model.Surface;
import wainscribe.model.length.LengthUnit;
import wainscribe.report.finish.RoomFinish;
import wainscribe.report.finish.ZoneFinish;
import wainscribe.takeoff.PaintArea;

/** The finish schedule for people: walls that take the same coat over the same preparation together, in the units of the home. */
public final class FinishText {

	/** Square feet in a square metre and litres in a US gallon, exact (NIST SP 811). */
	private static final double SQUARE_FOOT = 0.3048 * 0.3048;
	private static final double GALLON = 3.785411784;

	private final StringBuilder text = new StringBuilder();
	private final boolean inches;

	private FinishText(LengthUnit unit) {
		inches = unit == LengthUnit.INCH;
	}

	/** Returns the text, ending in a line break. */
	public static String of(List<RoomFinish> rooms, LengthUnit unit) {
		FinishText writer = new FinishText(unit);
		rooms.forEach(writer::room);
		return writer.text.toString();
	}

	private void room(RoomFinish room) {
		text.append(room.room()).append('\n');
		room.air().air().ifPresentOrElse(this::air, () -> text.append("  air not measured\n")); //$NON-NLS-1$
		room.air().day().ifPresent(this::day);
		if (room.zones().isEmpty()) {
			text.append("  no paint decided\n"); //$NON-NLS-1$
		}
		Map<Coat, List<ZoneFinish>> coats = room.zones().stream().collect(Collectors.groupingBy(Coat::of, LinkedHashMap::new, Collectors.toList()));
		coats.forEach(this::coat);
	}

	/** What walls have in common that are told together. */
	private record Coat(Paint paint, Surface surface, Optional<CoatingSystem> system, int coats, List<PreparationStep> preparation,
			List<String> unsuited) {

		static Coat of(ZoneFinish zone) {
			PaintArea area = zone.area();
			return new Coat(area.paint(), area.surface(), zone.system(), area.coats(), zone.preparation(), zone.unsuited());
		}
	}

	private void air(MoistAir air) {
		text.append(String.format(Locale.ROOT, "  air %s at %.0f %%, dew point %s%n", degrees(air.temperature()), air.humidity() * 100, //$NON-NLS-1$
				degrees(air.dewPoint())));
	}

	private void day(MoistureDay day) {
		text.append(String.format(Locale.ROOT,
				"  a day of use: up to %.0f %% humidity, %.1f h of wet walls, %.1f h with mould risk at the coldest wall (a simple model)%n", //$NON-NLS-1$
				day.peak() * 100, day.condensation(), day.mouldRisk()));
	}

	private void coat(Coat coat, List<ZoneFinish> zones) {
		String walls = zones.stream().map(zone -> zone.area().wall()).filter(wall -> !wall.isEmpty()).collect(Collectors.joining(", ")); //$NON-NLS-1$
		text.append("  ").append(coat.surface().getLiteral()).append(walls.isEmpty() ? "" : " of " + walls).append(": "); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
		text.append(coat.paint().getName() == null ? "" : coat.paint().getName() + ", "); //$NON-NLS-1$ //$NON-NLS-2$
		text.append(coat.system().map(CoatingSystem::name).orElse("no kind of paint known")).append("; ").append(amount(coat, zones)).append('\n'); //$NON-NLS-1$ //$NON-NLS-2$
		coat.unsuited().forEach(reason -> text.append("    does not suit: ").append(reason).append('\n')); //$NON-NLS-1$
		coat.preparation().forEach(this::step);
	}

	private String amount(Coat coat, List<ZoneFinish> zones) {
		if (zones.stream().anyMatch(zone -> zone.area().area().isEmpty())) {
			return zones.getFirst().area().formula();
		}
		double area = sum(zones.stream().map(zone -> zone.area().area()));
		double litres = sum(zones.stream().map(zone -> zone.area().litres()));
		String times = coat.coats() == 1 ? "1 coat" : coat.coats() + " coats"; //$NON-NLS-1$ //$NON-NLS-2$
		return inches ? String.format(Locale.ROOT, "%.0f ft2 (%.2f m2), %s, %.2f gal (%.2f L)", area / SQUARE_FOOT, area, times, litres / GALLON, litres) //$NON-NLS-1$
				: String.format(Locale.ROOT, "%.2f m2, %s, %.2f L", area, times, litres); //$NON-NLS-1$
	}

	private static double sum(Stream<Optional<BigDecimal>> amounts) {
		return amounts.flatMap(Optional::stream).mapToDouble(BigDecimal::doubleValue).sum();
	}

	private String degrees(double celsius) {
		return inches ? String.format(Locale.ROOT, "%.0f \u00b0F (%.1f \u00b0C)", celsius * 1.8 + 32, celsius) //$NON-NLS-1$
				: String.format(Locale.ROOT, "%.1f \u00b0C", celsius); //$NON-NLS-1$
	}

	private void step(PreparationStep step) {
		text.append("    - ").append(step.text()); //$NON-NLS-1$
		text.append(step.hours() == 0 ? "" : " Wait " + step.hours() + " h.").append('\n'); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}
}
