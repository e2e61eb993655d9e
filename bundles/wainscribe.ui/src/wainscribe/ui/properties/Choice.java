// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

/**
 * A chosen value, also when the choice is "not recorded": the property sheet shows no words for a bare null.
 *
 * @param value the value, null for not recorded
 */
record Choice(Object value) {

	/** Returns the value itself, whether it comes as a choice or bare. */
	static Object unwrapped(Object value) {
		return value instanceof Choice choice ? choice.value() : value;
	}
}
