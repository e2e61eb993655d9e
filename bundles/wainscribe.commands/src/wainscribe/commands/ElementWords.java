// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.MissingResourceException;
import java.util.ResourceBundle;

import org.eclipse.emf.common.util.Enumerator;

import wainscribe.model.Axis;
import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Opening;
import wainscribe.model.Placed;
import wainscribe.model.PlacedFrame;
import wainscribe.model.ReferenceLine;
import wainscribe.model.Service;

/** What a thing on a wall is called in the trade, in lower case for the middle of a sentence: outlet, towel bar, window. */
public final class ElementWords {

	private static final String NAMES = ElementWords.class.getPackageName() + ".element-words"; //$NON-NLS-1$

	private ElementWords() {
	}

	/**
	 * Returns the word for a thing.
	 *
	 * @param element something on a wall
	 * @return its word in the language of the user, never empty
	 */
	public static String of(Placed element) {
		return switch (element) {
			case Opening opening -> word("opening", opening.getKind()); //$NON-NLS-1$
			case Fixture fixture -> of(fixture.getType());
			case Box box -> of(box.getType());
			case ExistingTrim trim -> word("trim", trim.getType()); //$NON-NLS-1$
			case Service service -> word("service", service.getKind()); //$NON-NLS-1$
			case PlacedFrame frame -> word("frame", null); //$NON-NLS-1$
			default -> word("element", null); //$NON-NLS-1$
		};
	}

	/** Returns the word for a line laid on a wall. */
	public static String of(ReferenceLine line) {
		return word(line instanceof Axis ? "axis" : "guide", null); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** Returns the word for a kind of fixture. */
	public static String of(FixtureType type) {
		return word("fixture", type); //$NON-NLS-1$
	}

	/** Returns the word for a kind of electrical box. */
	public static String of(BoxType type) {
		return word("box", type); //$NON-NLS-1$
	}

	private static String word(String kind, Enumerator type) {
		ResourceBundle words = ResourceBundle.getBundle(NAMES);
		try {
			return words.getString(type == null ? kind : kind + '.' + type.getLiteral());
		} catch (MissingResourceException e) {
			return words.getString(kind);
		}
	}
}
