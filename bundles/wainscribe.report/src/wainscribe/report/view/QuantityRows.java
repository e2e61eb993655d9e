// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import wainscribe.model.length.LengthUnit;
import wainscribe.takeoff.PackCount;
import wainscribe.takeoff.TakeoffLine;
import wainscribe.takeoff.TakeoffTotals;

/** Makes the rows of quantities. */
final class QuantityRows {

	private static final int SHOWN_PLACES = 2;
	/** Exact by the international foot (NIST SP 811). */
	private static final BigDecimal METRES_PER_FOOT = new BigDecimal("0.3048");
	/** Litres in one US gallon, exact (NIST SP 811). */
	private static final BigDecimal LITRES_PER_GALLON = new BigDecimal("3.785411784");

	private final String currency;
	private final LengthUnit unit;

	QuantityRows(String currency, LengthUnit unit) {
		this.currency = currency;
		this.unit = unit;
	}

	List<QuantityRow> of(List<TakeoffLine> lines) {
		return lines.stream().map(this::row).toList();
	}

	private QuantityRow row(TakeoffLine line) {
		String need = line.quantity() == null ? "\u2013" : amount(line.quantity(), line.unit());
		String buy = line.packs().stream().map(this::pack).collect(Collectors.joining(", "));
		return new QuantityRow(line.group(), line.item(), need, buy.isEmpty() ? "\u2013" : buy, line.formula(), line.source(),
				line.isPriced() ? money(line.total()) : "\u2013");
	}

	private String pack(PackCount pack) {
		return pack.count() + " \u00d7 " + amount(pack.size(), pack.unit());
	}

	/** Inch homes see feet and gallons. */
	private String amount(BigDecimal amount, String measure) {
		if (unit == LengthUnit.INCH && measure.equals("m")) {
			return rounded(amount.divide(METRES_PER_FOOT, SHOWN_PLACES, RoundingMode.HALF_UP)) + " ft";
		}
		String text = rounded(amount) + " " + measure;
		if (unit == LengthUnit.INCH && measure.equals("L")) {
			return text + " (" + rounded(amount.divide(LITRES_PER_GALLON, SHOWN_PLACES, RoundingMode.HALF_UP)) + " gal)";
		}
		return text;
	}

	private static String rounded(BigDecimal amount) {
		return Wording.number(amount.setScale(SHOWN_PLACES, RoundingMode.HALF_UP));
	}

	List<Fact> totals(TakeoffTotals totals) {
		List<Fact> facts = new ArrayList<>();
		facts.add(new Fact("Priced items", money(totals.net())));
		if (totals.taxPercent().signum() != 0) {
			facts.add(new Fact("Tax " + Wording.number(totals.taxPercent()) + " %", money(totals.tax())));
		}
		facts.add(new Fact("Total", money(totals.gross())));
		if (totals.unpriced() > 0) {
			facts.add(new Fact("Not priced yet", totals.unpriced() == 1 ? "1 line" : totals.unpriced() + " lines"));
		}
		return facts;
	}

	/** Returns the sum with tax in a few words. */
	String total(TakeoffTotals totals) {
		if (totals.gross().signum() == 0 && totals.unpriced() > 0) {
			return "not priced yet";
		}
		return money(totals.gross());
	}

	String money(BigDecimal amount) {
		String text = amount.setScale(SHOWN_PLACES, RoundingMode.HALF_UP).toPlainString();
		return currency.isEmpty() ? text : text + " " + currency;
	}
}
