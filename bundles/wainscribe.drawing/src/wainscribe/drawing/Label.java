// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

import java.util.Objects;

/**
 * One line of text.
 *
 * @param subject  what it stands for
 * @param role     what decides its look
 * @param text     any characters; control characters are not expected
 * @param at       on the base line, at the end that {@code anchor} names
 * @param size     size of the letters (height of the line of text without spacing), millimetres on the wall
 * @param width    width of the text, millimetres on the wall, as the drawing's {@link TextMetrics} gave it
 * @param anchor   which point of the base line lies at {@code at}
 * @param upright  true: the text is turned by 90 degrees and reads upwards
 */
public record Label(Subject subject, Role role, String text, Point at, double size, double width, Anchor anchor,
		boolean upright) implements Shape {

	/** Share of the size that capitals rise above the base line. */
	public static final double CAP_HEIGHT = 0.72;
	/** Share of the size that tails hang below the base line. */
	public static final double TAIL = 0.21;

	/** A point of the base line. */
	public enum Anchor {
		/** Where the text begins. */
		START,
		/** Half way. */
		MIDDLE,
		/** Where the text ends. */
		END
	}

	/** Refuses nulls. */
	public Label {
		Objects.requireNonNull(subject);
		Objects.requireNonNull(role);
		Objects.requireNonNull(text);
		Objects.requireNonNull(at);
		Objects.requireNonNull(anchor);
	}

	/** Returns where the base line begins. */
	public Point start() {
		double back = switch (anchor) {
			case START -> 0;
			case MIDDLE -> width / 2;
			case END -> width;
		};
		return upright ? at.plus(0, -back) : at.plus(-back, 0);
	}

	@Override
	public Bounds bounds() {
		Point start = start();
		double above = size * CAP_HEIGHT;
		double below = size * TAIL;
		return upright ? new Bounds(start.x() - above, start.y(), start.x() + below, start.y() + width)
				: new Bounds(start.x(), start.y() - below, start.x() + width, start.y() + above);
	}
}
