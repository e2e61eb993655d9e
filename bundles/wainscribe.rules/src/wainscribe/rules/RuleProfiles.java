// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.util.Locale;
import java.util.Set;

import wainscribe.model.Home;

/** Which rule profiles the country of a home switches on. */
public final class RuleProfiles {

	/** Dwellings in the United States; also where no country was recorded, so that cautions are not lost. */
	public static final String UNITED_STATES = "us"; //$NON-NLS-1$
	/** The United Kingdom. */
	public static final String UNITED_KINGDOM = "uk"; //$NON-NLS-1$

	private RuleProfiles() {
	}

	/** Returns the profiles of a home: its country code in small letters. */
	public static Set<String> of(Home home) {
		String country = home.getCountry();
		if (country == null || country.isBlank()) {
			return Set.of(UNITED_STATES);
		}
		String code = country.strip().toLowerCase(Locale.ROOT);
		return Set.of("gb".equals(code) ? UNITED_KINGDOM : code); //$NON-NLS-1$
	}
}
