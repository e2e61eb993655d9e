// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

/** Where a bar comes from. */
public enum BarSource {
	/** Bought. */
	STOCK,
	/** Left over from earlier work, free. */
	OFFCUT
}
