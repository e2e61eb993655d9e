// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

/** Keeps a sentence from saying a word twice where a thing is named as what it is: "Mirror mirror", "Towel bar bar". */
final class RepeatedWord {

	private RepeatedWord() {
	}

	/**
	 * Shortens a name that goes into a sentence.
	 *
	 * @param pattern  the sentence with places as {@code {0}}
	 * @param place    number of the name's place
	 * @param name     the name
	 * @return the pattern itself, or with the place and the word before it replaced by the name
	 */
	static String without(String pattern, int place, String name) {
		String mark = " {" + place + '}'; //$NON-NLS-1$
		int at = pattern.indexOf(mark);
		if (at <= 0 || name.isBlank() || name.indexOf('{') >= 0 || name.indexOf('\'') >= 0) {
			return pattern;
		}
		int begin = pattern.lastIndexOf(' ', at - 1) + 1;
		String before = pattern.substring(begin, at);
		boolean repeats = name.equalsIgnoreCase(before)
				|| name.length() > before.length() && name.substring(0, before.length() + 1).equalsIgnoreCase(before + ' ');
		if (!repeats || before.isEmpty()) {
			return pattern;
		}
		return pattern.substring(0, at) + name.substring(before.length()) + pattern.substring(at + mark.length());
	}
}
