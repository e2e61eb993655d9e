// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.UUID;

import wainscribe.model.Price;
import wainscribe.model.PriceUnit;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;

/**
 * One row of a price list.
 *
 * @param item       id of a profile, alone or with its material ({@code ogee-32 poplar}); name of a paint; or a
 *                   {@link QuantityKey}
 * @param unit       what the price is for
 * @param pack       how much one pack holds; 1 for a stock length
 * @param packLength length of a stock length; null for other units
 * @param amount     price of one pack before tax
 */
public record PriceRow(String item, PriceUnit unit, BigDecimal pack, Length packLength, BigDecimal amount) {

	/** Refuses nulls but for the pack's length. */
	public PriceRow {
		Objects.requireNonNull(item);
		Objects.requireNonNull(unit);
		Objects.requireNonNull(pack);
		Objects.requireNonNull(amount);
	}

	/** Tells whether another row is for the same pack. */
	boolean isSamePack(PriceRow other) {
		return item.equals(other.item) && unit == other.unit && pack.compareTo(other.pack) == 0
				&& Objects.equals(packLength, other.packLength);
	}

	/** Returns a price for a home; the same pack always has the same id. */
	Price toPrice() {
		Price price = WainscribeFactory.eINSTANCE.createPrice();
		String identity = String.join("\n", item, unit.getLiteral(), Amounts.plain(pack), String.valueOf(packLength)); //$NON-NLS-1$
		price.setId(UUID.nameUUIDFromBytes(identity.getBytes(StandardCharsets.UTF_8)).toString());
		price.setItem(item);
		price.setUnit(unit);
		price.setPack(unit == PriceUnit.LENGTH ? null : pack);
		price.setPackLength(packLength);
		price.setAmount(amount);
		return price;
	}
}
