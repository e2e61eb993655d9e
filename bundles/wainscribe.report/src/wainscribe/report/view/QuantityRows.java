// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import wainscribe.model.length.LengthUnit;
import wainscribe.takeoff.AmountText;
import wainscribe.takeoff.PackCount;
import wainscribe.takeoff.TakeoffLine;
import wainscribe.takeoff.TakeoffTotals;

/** Makes the rows of quantities. */
final class QuantityRows {

	private static final int SHOWN_PLACES = 2;

	private final String currency;
	private final AmountText amounts;

	QuantityRows(String currency, LengthUnit unit) {
		this.currency = currency;
		amounts = new AmountText(unit);
	}

	List<QuantityRow> of(List<TakeoffLine> lines) {
		return lines.stream().map(this::row).toList();
	}

	private QuantityRow row(TakeoffLine line) {
		String need = line.quantity() == null ? "\u2013" : amounts.of(line.quantity(), line.unit());
		String buy = line.packs().stream().map(this::pack).collect(Collectors.joining(", "));
		return new QuantityRow(line.group(), line.item(), need, buy.isEmpty() ? "\u2013" : buy, line.formula(), line.source(),
				line.isPriced() ? money(line.total()) : "\u2013");
	}

	private String pack(PackCount pack) {
		return pack.count() + " \u00d7 " + amounts.of(pack.size(), pack.unit());
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
