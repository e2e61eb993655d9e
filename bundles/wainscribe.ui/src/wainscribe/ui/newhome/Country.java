// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.newhome;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import wainscribe.model.length.LengthUnit;

/**
 * A country a home can be in: chooses rules and plate sizes, and proposes units.
 *
 * @param code as homes keep it, the common one: UK rather than GB
 * @param name in the language of the user
 */
record Country(String code, String name) {

	private static final String UNITED_KINGDOM = "UK"; //$NON-NLS-1$
	private static final String UNITED_KINGDOM_ISO = "GB"; //$NON-NLS-1$
	/** Where carpenters' tapes show feet and inches first; from memory. */
	private static final Set<String> INCHES = Set.of("US", "LR", "MM"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$

	/** Returns all countries by name. */
	static List<Country> all() {
		List<Country> all = new ArrayList<>(Arrays.stream(Locale.getISOCountries()).map(Country::ofIso).toList());
		all.sort(Comparator.comparing(Country::name));
		return all;
	}

	/** Finds the country that the machine is set to, else the United States. */
	static Country here() {
		String iso = Locale.getDefault().getCountry();
		return ofIso(iso.length() == 2 ? iso : Locale.US.getCountry());
	}

	/** Returns the units in which its carpenters measure. */
	LengthUnit units() {
		return INCHES.contains(code) ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
	}

	private static Country ofIso(String iso) {
		return new Country(UNITED_KINGDOM_ISO.equals(iso) ? UNITED_KINGDOM : iso, Locale.of("", iso).getDisplayCountry()); //$NON-NLS-1$
	}
}
