// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.Locale;

/** What a piece of moulding belongs to. */
public enum PieceKind {
	/** A side of a panel frame. */
	FRAME,
	/** A batten or a board of a grid. */
	STRIP,
	/** The rail. */
	RAIL,
	/** The base on the floor. */
	BASE,
	/** The crown under the ceiling. */
	CROWN;

	/** Tells whether pieces are never joined from shorter ones: sides of frames, battens and boards. */
	public boolean isSingle() {
		return this == FRAME || this == STRIP;
	}

	/** Returns the word used in files and labels: {@code frame}, {@code rail} ... */
	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}
}
