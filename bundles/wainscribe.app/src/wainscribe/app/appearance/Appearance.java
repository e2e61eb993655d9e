// SPDX-License-Identifier: EPL-2.0
package wainscribe.app.appearance;

import java.util.Arrays;
import java.util.Optional;

/** How the window looks. */
enum Appearance {

	LIGHT("light", "org.eclipse.e4.ui.css.theme.e4_default"), //$NON-NLS-1$ //$NON-NLS-2$
	DARK("dark", "org.eclipse.e4.ui.css.theme.e4_dark"); //$NON-NLS-1$ //$NON-NLS-2$

	private final String key;
	private final String themeId;

	Appearance(String key, String themeId) {
		this.key = key;
		this.themeId = themeId;
	}

	/** The platform's theme behind it. */
	String themeId() {
		return themeId;
	}

	/** Finds the one that a menu entry names; empty for an unknown word. */
	static Optional<Appearance> ofKey(String key) {
		return Arrays.stream(values()).filter(appearance -> appearance.key.equals(key)).findFirst();
	}
}
