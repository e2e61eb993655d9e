// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.text;

import java.util.List;
import java.util.Locale;

import wainscribe.finishes.air.MoistAir;
import wainscribe.finishes.air.MoistureDay;
import wainscribe.finishes.coating.CoatingSystem;
import wainscribe.finishes.surface.PreparationStep;
import wainscribe.report.finish.RoomFinish;
import wainscribe.report.finish.ZoneFinish;

/** The finish schedule for people. */
public final class FinishText {

	private final StringBuilder text = new StringBuilder();

	private FinishText() {
	}

	/** Returns the text, ending in a line break. */
	public static String of(List<RoomFinish> rooms) {
		FinishText writer = new FinishText();
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
		room.zones().forEach(this::zone);
	}

	private void air(MoistAir air) {
		text.append(String.format(Locale.ROOT, "  air %.1f degrees C at %.0f %%, dew point %.1f degrees C%n", air.temperature(), //$NON-NLS-1$
				air.humidity() * 100, air.dewPoint()));
	}

	private void day(MoistureDay day) {
		text.append(String.format(Locale.ROOT,
				"  a day of use: up to %.0f %% humidity, %.1f h of wet walls, %.1f h with mould risk at the coldest wall (a simple model)%n", //$NON-NLS-1$
				day.peak() * 100, day.condensation(), day.mouldRisk()));
	}

	private void zone(ZoneFinish zone) {
		String where = zone.area().wall().isEmpty() ? zone.area().surface().getLiteral()
				: zone.area().wall() + ", " + zone.area().surface().getLiteral(); //$NON-NLS-1$
		String name = zone.area().paint().getName() == null ? "" : zone.area().paint().getName() + ", "; //$NON-NLS-1$ //$NON-NLS-2$
		text.append("  ").append(where).append(": ").append(name).append(zone.system().map(CoatingSystem::name).orElse("no kind of paint known")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		zone.area().area().ifPresentOrElse(
				area -> text.append(String.format(Locale.ROOT, "; %.2f m2, %d x, %.2f L%n", area, zone.area().coats(), zone.area().litres().orElseThrow())), //$NON-NLS-1$
				() -> text.append("; ").append(zone.area().formula()).append('\n')); //$NON-NLS-1$
		zone.unsuited().forEach(reason -> text.append("    does not suit: ").append(reason).append('\n')); //$NON-NLS-1$
		zone.preparation().forEach(this::step);
	}

	private void step(PreparationStep step) {
		text.append("    - ").append(step.text()); //$NON-NLS-1$
		text.append(step.hours() == 0 ? "" : " Wait " + step.hours() + " h.").append('\n'); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}
}
