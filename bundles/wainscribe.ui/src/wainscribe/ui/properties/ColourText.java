// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.Locale;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;

/** Colours as {@code #rrggbb}. */
final class ColourText implements ValueText<String> {

	private static final Pattern SIX_DIGITS = Pattern.compile("#?[0-9a-fA-F]{6}"); //$NON-NLS-1$

	@Override
	public String shown(String value) {
		return value;
	}

	@Override
	public String read(String text) {
		String colour = text.strip();
		if (!SIX_DIGITS.matcher(colour).matches()) {
			throw new IllegalArgumentException(NLS.bind(Messages.ColourText_Expected, text));
		}
		return (colour.startsWith("#") ? colour : '#' + colour).toLowerCase(Locale.ROOT); //$NON-NLS-1$
	}
}
