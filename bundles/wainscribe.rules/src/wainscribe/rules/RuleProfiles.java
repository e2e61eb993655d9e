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

	/** Returns the profiles of a home: its country code in small letters; of {@code CA-ON} also that of Canada. */
	public static Set<String> of(Home home) {
		String country = home.getCountry();
		if (country == null || country.isBlank()) {
			return Set.of(UNITED_STATES);
		}
		String code = country.strip().toLowerCase(Locale.ROOT);
		if ("gb".equals(code)) { //$NON-NLS-1$
			return Set.of(UNITED_KINGDOM);
		}
		int part = code.indexOf('-');
		return part > 0 ? Set.of(code, code.substring(0, part)) : Set.of(code);
	}
}
