// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.properties;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.SupplyLength;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.properties.LengthText;
import wainscribe.ui.properties.LengthText.Range;
import wainscribe.ui.properties.ValueText;

/** Lengths in which a moulding is sold, with the price of one if it is known: {@code 8' at 12.40; 12'}. */
public final class SupplyText implements ValueText<List<SupplyLength>> {

	private static final String BETWEEN = "; "; //$NON-NLS-1$
	private static final Pattern ONE = Pattern.compile("(?<length>.+?)\\s*(?:\\bat\\b|@|=)\\s*(?<price>\\S+)"); //$NON-NLS-1$

	private final LengthText lengths;

	/**
	 * Creates the kind of value.
	 *
	 * @param unit in which lengths are shown and bare numbers are typed
	 */
	public SupplyText(LengthUnit unit) {
		lengths = new LengthText(unit, Range.ABOVE_ZERO);
	}

	@Override
	public String shown(List<SupplyLength> supply) {
		return supply.stream().map(this::shown).collect(Collectors.joining(BETWEEN));
	}

	private String shown(SupplyLength one) {
		String length = lengths.typed(one.length());
		return one.knownPrice().map(price -> length + " at " + price.toPlainString()).orElse(length); //$NON-NLS-1$
	}

	@Override
	public List<SupplyLength> read(String text) {
		List<SupplyLength> supply = new ArrayList<>();
		for (String part : text.split("[;,]")) { //$NON-NLS-1$
			if (!part.isBlank()) {
				supply.add(one(part.strip()));
			}
		}
		return List.copyOf(supply);
	}

	private SupplyLength one(String text) {
		Matcher priced = ONE.matcher(text);
		if (!priced.matches()) {
			return new SupplyLength(lengths.read(text), null);
		}
		Length length = lengths.read(priced.group("length")); //$NON-NLS-1$
		try {
			return new SupplyLength(length, new BigDecimal(priced.group("price"))); //$NON-NLS-1$
		} catch (IllegalArgumentException e) {
			throw new IllegalArgumentException(NLS.bind(Messages.SupplyText_Price, priced.group("price")), e); //$NON-NLS-1$
		}
	}
}
