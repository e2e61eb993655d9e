// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.words;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.RoomDesign;
import wainscribe.layout.axes.AxisCheck;
import wainscribe.layout.axes.AxisFit;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;
import wainscribe.ui.elevation.Messages;

/** What the drawing table says of axes. */
public final class AxisText {

	private AxisText() {
	}

	/** Returns how the frames of each tier lie about the axis of a wall at a place. */
	public static List<AxisFit> fits(RoomDesign design, Wall wall, Length at) {
		return design.layout().of(wall).map(AxisCheck::of).orElse(List.of()).stream().filter(fit -> fit.axis().at().equals(at))
				.toList();
	}

	/** Returns one or two words for the drawing; empty without frames. */
	public static String note(List<AxisFit> fits, LengthUnit unit) {
		return fits.stream().map(fit -> fit.note(unit)).distinct().collect(Collectors.joining(", ")); //$NON-NLS-1$
	}

	/** Returns where the axis is and what was found, for people who listen to the screen. */
	public static String value(List<AxisFit> fits, Length at, LengthUnit unit) {
		String place = NLS.bind(Messages.LineEditPart_FromLeft, LengthFormat.asShown(at, unit));
		return fits.isEmpty() ? place
				: place + "; " + fits.stream().map(fit -> fit.sentence(unit)).collect(Collectors.joining("; ")); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
