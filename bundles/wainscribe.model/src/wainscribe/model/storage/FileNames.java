// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.storage;

import java.text.Normalizer;
import java.util.Collection;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Derives file names from free text: lower-case letters a to z, digits and hyphens, so that a name never leaves its folder and
 * is the same on every system.
 */
public final class FileNames {

	private static final int LONGEST = 60;
	private static final Set<String> RESERVED = Set.of("con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$ //$NON-NLS-7$ //$NON-NLS-8$
			"com5", "com6", "com7", "com8", "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$ //$NON-NLS-7$ //$NON-NLS-8$ //$NON-NLS-9$ //$NON-NLS-10$ //$NON-NLS-11$ //$NON-NLS-12$ //$NON-NLS-13$ //$NON-NLS-14$

	private FileNames() {
	}

	/**
	 * Derives a name that is not taken.
	 *
	 * @param text     free text, may be null or empty
	 * @param fallback used where the text holds no letter or digit; also put before a name that a system reserves
	 * @param taken    names in use, compared without regard to case
	 * @return a name without extension
	 */
	public static String derive(String text, String fallback, Collection<String> taken) {
		Set<String> used = taken.stream().map(name -> name.toLowerCase(Locale.ROOT)).collect(Collectors.toSet());
		return unique(stem(text, fallback), used::contains);
	}

	/** Derives a name from free text without regard to others; see {@link #derive}. */
	public static String stem(String text, String fallback) {
		String plain = Normalizer.normalize(text == null ? "" : text, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT) //$NON-NLS-1$
				.replaceAll("\\p{M}+", "").replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", ""); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$
		if (plain.length() > LONGEST) {
			plain = plain.substring(0, LONGEST).replaceAll("-+$", ""); //$NON-NLS-1$ //$NON-NLS-2$
		}
		if (plain.isEmpty()) {
			return fallback;
		}
		return RESERVED.contains(plain) ? fallback + '-' + plain : plain;
	}

	/** Returns the stem, or the stem with -2, -3 ... until it is not taken. */
	public static String unique(String stem, Predicate<String> taken) {
		String name = stem;
		for (int number = 2; taken.test(name); number++) {
			name = stem + '-' + number;
		}
		return name;
	}
}
