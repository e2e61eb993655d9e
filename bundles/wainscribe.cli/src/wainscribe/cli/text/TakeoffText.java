// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.text;

import java.util.List;
import java.util.stream.Collectors;

import wainscribe.model.length.LengthUnit;
import wainscribe.takeoff.AmountText;
import wainscribe.takeoff.HomeTakeoff;
import wainscribe.takeoff.PackCount;
import wainscribe.takeoff.RoomTakeoff;
import wainscribe.takeoff.TakeoffLine;
import wainscribe.takeoff.TakeoffTotals;

/** Quantities and budget for people: what to buy for the whole home, then each room. */
public final class TakeoffText {

	private final StringBuilder text = new StringBuilder();
	private final String currency;
	private final AmountText amounts;

	private TakeoffText(String currency, LengthUnit unit) {
		amounts = new AmountText(unit);
		this.currency = currency.isEmpty() ? "" : ' ' + currency; //$NON-NLS-1$
	}

	/** Returns the text in the units of a home, ending in a line break. */
	public static String of(HomeTakeoff takeoff, LengthUnit unit) {
		TakeoffText writer = new TakeoffText(takeoff.currency(), unit);
		writer.part(takeoff.home().isEmpty() ? "All rooms together" : takeoff.home() + ", all rooms together", takeoff.lines(), takeoff.totals()); //$NON-NLS-1$ //$NON-NLS-2$
		for (RoomTakeoff room : takeoff.rooms()) {
			writer.text.append('\n');
			writer.part(room.room() + ", bought by itself", room.lines(), room.totals()); //$NON-NLS-1$
		}
		return writer.text.toString();
	}

	private void part(String title, List<TakeoffLine> lines, TakeoffTotals totals) {
		text.append(title).append('\n');
		String group = null;
		for (TakeoffLine line : lines) {
			if (!line.group().equals(group)) {
				group = line.group();
				text.append("  ").append(group).append('\n'); //$NON-NLS-1$
			}
			text.append("    ").append(line.item()).append(": ").append(quantity(line)).append(packs(line)).append(price(line)) //$NON-NLS-1$ //$NON-NLS-2$
					.append("\n        ").append(line.formula()).append(" (").append(line.source()).append(")\n"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
		text.append("  net ").append(totals.net()).append(", tax ").append(totals.tax()).append(", total ") //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
				.append(totals.gross()).append(currency);
		text.append(totals.unpriced() == 0 ? "" : ", " + totals.unpriced() + " lines without a price").append('\n'); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private String quantity(TakeoffLine line) {
		return line.quantity() == null ? "not known" : amounts.of(line.quantity(), line.unit()); //$NON-NLS-1$
	}

	private String packs(TakeoffLine line) {
		return line.packs().isEmpty() ? "" //$NON-NLS-1$
				: line.packs().stream().map(this::pack).collect(Collectors.joining(" + ", ", buy ", "")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private String pack(PackCount packs) {
		return packs.count() + " x " + amounts.of(packs.size(), packs.unit()); //$NON-NLS-1$
	}

	private String price(TakeoffLine line) {
		return line.isPriced() ? ", " + line.total() + currency : ", no price"; //$NON-NLS-1$ //$NON-NLS-2$
	}
}
