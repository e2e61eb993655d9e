// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import wainscribe.model.Home;

/**
 * Prices read from a file, not yet taken into a home.
 *
 * @param rows in the order of the file, each pack once
 */
public record PriceList(List<PriceRow> rows) {

	/** Copies the rows. */
	public PriceList {
		rows = List.copyOf(rows);
	}

	/**
	 * Takes the prices into a home: all prices of an item that the list has are replaced, those of other items stay.
	 *
	 * @param home the home to change
	 */
	public void applyTo(Home home) {
		Set<String> items = new HashSet<>();
		rows.forEach(row -> items.add(row.item()));
		home.getPrices().removeIf(price -> items.contains(price.getItem()));
		rows.forEach(row -> home.getPrices().add(row.toPrice()));
	}
}
