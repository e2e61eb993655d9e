// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.drafting.appearance;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

import wainscribe.drawing.Tone;

/** Chooses the colours of the drawing table by the theme the workbench wears now. */
public final class Appearance {

	private static final double HALF = 128;

	private Appearance() {
	}

	/**
	 * Returns the colours that go with the surroundings.
	 *
	 * @param surroundings a control that the theme has coloured
	 */
	public static TableColours of(Control surroundings) {
		Display display = surroundings.getDisplay();
		if (display.getHighContrast()) {
			return TableColours.contrast(tone(display.getSystemColor(SWT.COLOR_LIST_BACKGROUND)),
					tone(display.getSystemColor(SWT.COLOR_LIST_FOREGROUND)),
					tone(display.getSystemColor(SWT.COLOR_LIST_SELECTION)));
		}
		return isDark(surroundings.getBackground()) ? TableColours.dark() : TableColours.light();
	}

	/** Returns a colour for painting. */
	public static Color colour(Tone tone) {
		return new Color(tone.red(), tone.green(), tone.blue());
	}

	private static boolean isDark(Color colour) {
		// luma weights of ITU-R BT.601
		return 0.299 * colour.getRed() + 0.587 * colour.getGreen() + 0.114 * colour.getBlue() < HALF;
	}

	private static Tone tone(Color colour) {
		return Tone.of(colour.getRed() << 16 | colour.getGreen() << 8 | colour.getBlue());
	}
}
