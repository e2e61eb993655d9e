// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

/**
 * A decision as the designer sees it: what was decided here, or else what holds without it.
 *
 * @param own       decided here; null when not
 * @param effective what holds; null when nothing does
 * @param origin    where {@code effective} comes from, shown beside it; empty when it was decided here
 */
record Decision(Object own, Object effective, String origin) {

	/** Returns this with another decision. */
	Decision with(Object other) {
		return new Decision(other, other == null ? effective : other, origin);
	}
}
