// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.lining;

import wainscribe.commands.Alignment;

/** What the alignments are called in menus and in the history. */
public final class LiningWords {

	private LiningWords() {
	}

	/** Returns the name of an alignment. */
	public static String of(Alignment alignment) {
		return switch (alignment) {
			case LEFT -> Messages.LiningWords_Left;
			case CENTRE -> Messages.LiningWords_Centre;
			case RIGHT -> Messages.LiningWords_Right;
			case TOP -> Messages.LiningWords_Top;
			case MIDDLE -> Messages.LiningWords_Middle;
			case BOTTOM -> Messages.LiningWords_Bottom;
			case SPACE_ALONG -> Messages.LiningWords_SpaceAlong;
			case SPACE_UP -> Messages.LiningWords_SpaceUp;
		};
	}
}
