// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import org.eclipse.osgi.util.NLS;

/**
 * Whole numbers between two bounds.
 *
 * @param least    smallest number allowed
 * @param greatest largest number allowed
 */
record WholeNumberText(int least, int greatest) implements ValueText<Integer> {

	@Override
	public String shown(Integer value) {
		return value.toString();
	}

	@Override
	public Integer read(String text) {
		int number;
		try {
			number = Integer.parseInt(text.strip());
		} catch (NumberFormatException e) {
			throw refusal(text);
		}
		if (number < least || number > greatest) {
			throw refusal(text);
		}
		return number;
	}

	private IllegalArgumentException refusal(String text) {
		return new IllegalArgumentException(NLS.bind(Messages.WholeNumberText_Expected,
			new Object[] { text, String.valueOf(least), String.valueOf(greatest) }));
	}
}
