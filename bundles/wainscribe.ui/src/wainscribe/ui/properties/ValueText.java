// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

/**
 * Turns values of one kind into text and back.
 *
 * @param <T> the kind of value
 */
public interface ValueText<T> {

	/** Writes a value for the eye. */
	String shown(T value);

	/** Writes a value so that {@link #read(String)} gives the very same one back. */
	default String typed(T value) {
		return shown(value);
	}

	/**
	 * Reads what was typed.
	 *
	 * @param text with something in it besides blanks
	 * @return the value, never null
	 * @throws IllegalArgumentException if it is none; the message is one line that says what was expected
	 */
	T read(String text);
}
