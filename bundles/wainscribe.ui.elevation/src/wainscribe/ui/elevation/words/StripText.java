// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.words;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.StripOutline;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;
import wainscribe.ui.elevation.Messages;

/** Names and numbers of battens and boards as sentences. */
public final class StripText {

	private StripText() {
	}

	/** Returns the name of a strip. */
	public static String name(StripOutline strip) {
		return NLS.bind(switch (strip.kind()) {
			case BATTEN -> Messages.StripText_Batten;
			case STILE -> Messages.StripText_Stile;
			case RAIL -> Messages.StripText_Board;
		}, strip.id());
	}

	/** Returns its numbers. */
	public static String value(StripOutline strip, LengthUnit unit) {
		return NLS.bind(Messages.FrameText_Value, new Object[] { LengthFormat.asShown(strip.width(), unit),
				LengthFormat.asShown(strip.height(), unit), LengthFormat.asShown(strip.x(), unit), LengthFormat.asShown(strip.y(), unit) });
	}
}
