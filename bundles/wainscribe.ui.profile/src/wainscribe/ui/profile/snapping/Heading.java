// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.snapping;

/**
 * Which way a guide line runs. On it {@code up} times the height and {@code out} times the distance from the wall add up to a
 * constant.
 */
public enum Heading {
	/** Square to the wall: all its points are equally high. */
	LEVEL(1, 0),
	/** Along the wall: all its points are equally far out. */
	PLUMB(0, 1),
	/** Up and out at 45 degrees. */
	RISING(1, -1),
	/** Down and out at 45 degrees. */
	FALLING(1, 1);

	private final int up;
	private final int out;

	Heading(int up, int out) {
		this.up = up;
		this.out = out;
	}

	/** Returns the factor of the height. */
	int up() {
		return up;
	}

	/** Returns the factor of the distance from the wall. */
	int out() {
		return out;
	}
}
