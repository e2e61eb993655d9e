// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

/**
 * Widths of a plain sans-serif face, the same on every machine.
 * <p>
 * Thousandths of the size: digits 556, space and slash 278, as in the metrics of the standard PDF sans-serif face (ISO
 * 32000-1, 9.6.2.2); other letters by class and generous, so that no face in common use is wider.
 */
public final class PlainTextMetrics implements TextMetrics {

	private static final double THOUSAND = 1000;
	private static final int FIRST_IDEOGRAPH = 0x1100;
	private static final int FIRST_SURROGATE_PLANE = 0x10000;

	@Override
	public double width(String text, double size) {
		return text.codePoints().map(PlainTextMetrics::advance).sum() * size / THOUSAND;
	}

	private static int advance(int character) {
		if (character >= FIRST_SURROGATE_PLANE) {
			return 1300;
		}
		if (character >= FIRST_IDEOGRAPH) {
			return 1050;
		}
		if (Character.isDigit(character)) {
			return 556;
		}
		return switch (character) {
			case ' ', '/', '.', ',', ':', ';', '!', 'i', 'j', 'l', 'I', 't', 'f', '\'', '(', ')', '|', '[', ']' -> 278;
			case '"', '-', 'r', '*' -> 355;
			case '~', '+', '=', '<', '>', '\u00d7' -> 584;
			case 'm', 'w', 'M', 'W', '%' -> 950;
			case '@' -> 1015;
			default -> Character.isUpperCase(character) ? 740 : 560;
		};
	}
}
