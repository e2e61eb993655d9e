// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.words;

import java.util.Locale;

import org.eclipse.osgi.util.NLS;

import wainscribe.commands.ElementWords;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.elevation.Messages;

/** Names and numbers of surveyed things as sentences. */
public final class ElementText {

	private ElementText() {
	}

	/** Returns the name of a wall. */
	public static String name(Wall wall) {
		return wall.getName() == null ? Messages.ElementText_UnnamedWall : NLS.bind(Messages.ElementText_Wall, wall.getName());
	}

	/** Returns the numbers of a wall. */
	public static String value(Wall wall, LengthUnit unit) {
		WallShape shape = WallShape.of(wall);
		return NLS.bind(Messages.ElementText_WallValue, LengthFormat.asShown(shape.length(), unit),
				LengthFormat.asShown(shape.ceilingLeft(), unit));
	}

	/** Returns the name of a thing: its own with the word for it, or the word alone. */
	public static String name(Placed element) {
		String word = ElementWords.of(element);
		if (element.getName() == null || element.getName().isBlank()) {
			return word;
		}
		boolean saysIt = element.getName().toLowerCase(Locale.ROOT).contains(word);
		return saysIt ? element.getName() : NLS.bind(Messages.ElementText_NamedThing, word, element.getName());
	}

	/** Returns the numbers of a thing. */
	public static String value(Placed element, LengthUnit unit) {
		return NLS.bind(goes(element) ? Messages.ElementText_GoesValue : Messages.ElementText_ThingValue, new Object[] { text(element.getWidth(), unit),
				text(element.getHeight(), unit), text(element.getX(), unit), text(element.getY(), unit) });
	}

	private static boolean goes(Placed element) {
		return element instanceof ExistingTrim trim && Boolean.FALSE.equals(trim.getKeep());
	}

	private static String text(Length length, LengthUnit unit) {
		return length == null ? Messages.ElementText_NotMeasured : LengthFormat.asShown(length, unit);
	}
}
