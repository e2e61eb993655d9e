// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

/** Measures text, so that a drawing can keep texts clear of each other before any backend paints them. */
@FunctionalInterface
public interface TextMetrics {

	/**
	 * Returns the width of a line of text.
	 *
	 * @param text any characters
	 * @param size of the letters
	 * @return in the unit of {@code size}; never less than what a backend will paint in a plain sans-serif face
	 */
	double width(String text, double size);
}
