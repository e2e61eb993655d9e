// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.words;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.FrameRole;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;
import wainscribe.ui.elevation.Messages;

/** Names and numbers of frames as sentences. */
public final class FrameText {

	private FrameText() {
	}

	/** Returns the name of a frame. */
	public static String name(FrameOutline frame) {
		return NLS.bind(Messages.FrameText_Name, frame.id());
	}

	/** Returns its numbers, and whether it is locked. */
	public static String value(FrameOutline frame, LengthUnit unit) {
		return NLS.bind(frame.role() == FrameRole.PLACED ? Messages.FrameText_LockedValue : Messages.FrameText_Value,
				new Object[] { LengthFormat.asShown(frame.width(), unit), LengthFormat.asShown(frame.height(), unit),
						LengthFormat.asShown(frame.x(), unit), LengthFormat.asShown(frame.y(), unit) });
	}
}
