// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.math.BigDecimal;

import org.eclipse.osgi.util.NLS;

/** Amounts of money and contents of packs, zero or more. */
public final class AmountText implements ValueText<BigDecimal> {

	@Override
	public String shown(BigDecimal value) {
		return value.toPlainString();
	}

	@Override
	public BigDecimal read(String text) {
		try {
			BigDecimal amount = new BigDecimal(text.strip());
			if (amount.signum() >= 0) {
				return amount;
			}
		} catch (NumberFormatException e) {
			throw new IllegalArgumentException(NLS.bind(Messages.AmountText_Expected, text), e);
		}
		throw new IllegalArgumentException(NLS.bind(Messages.AmountText_Expected, text));
	}
}
