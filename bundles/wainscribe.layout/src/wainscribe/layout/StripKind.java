// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import java.util.Locale;

/** What a strip is in its pattern. */
public enum StripKind {
	/** Stands between base and rail with clear wall on both sides. */
	BATTEN(true),
	/** An upright board of a grid. */
	STILE(true),
	/** A level board of a grid, between two stiles. */
	RAIL(false);

	private final boolean upright;

	StripKind(boolean upright) {
		this.upright = upright;
	}

	/** Tells whether it stands upright, else it lies level or along a slope. */
	public boolean isUpright() {
		return upright;
	}

	/** Returns the word used in files: {@code batten}, {@code stile} or {@code rail}. */
	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}
}
