// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

import java.util.List;

import wainscribe.profile.section.Segment;

/**
 * Reads the data of one closed SVG path (SVG 1.1, chapter 8). Written here because the parsers on offer come with a whole
 * graphics toolkit and do not say at which character a path breaks. y is turned upwards on the way.
 */
final class SvgPath {

	private final SvgPathScanner scanner;
	private final double scale;
	private TracePen pen;
	private double startX;
	private double startY;
	private double x;
	private double y;
	/** Handle that S and T reflect: the last one of the command before, or the current point. */
	private double handleX;
	private double handleY;
	private char before = 'M';
	private boolean closed;

	SvgPath(String data, double millimetresPerUnit) {
		scanner = new SvgPathScanner(data);
		scale = millimetresPerUnit;
	}

	List<Segment> outline() throws SvgPathException {
		try {
			while (!scanner.atEnd()) {
				command();
			}
		} catch (ArithmeticException e) {
			throw new SvgPathException(scanner.position(), e.getMessage() + "; expected a section of a moulding in the unit asked"); //$NON-NLS-1$
		}
		if (pen == null || pen.segments().isEmpty()) {
			throw new SvgPathException(scanner.position(), "nothing drawn; expected a closed outline"); //$NON-NLS-1$
		}
		if (!closed && !pen.segments().getLast().end().equals(pen.segments().getFirst().start())) {
			throw new SvgPathException(scanner.position(), "the outline is open at " + x + ", " + y + "; expected it to end where it began"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
		return pen.segments();
	}

	private void command() throws SvgPathException {
		int place = scanner.position();
		char letter = scanner.command();
		if (pen == null && Character.toUpperCase(letter) != 'M') {
			throw new SvgPathException(place, "\"" + letter + "\"; expected M first"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		if (pen != null && (closed || Character.toUpperCase(letter) == 'M')) {
			throw new SvgPathException(place, "a second outline; expected one closed outline"); //$NON-NLS-1$
		}
		if (Character.toUpperCase(letter) == 'Z') {
			pen.lineTo(startX, -startY);
			closed = true;
			return;
		}
		char kind = letter;
		do {
			stroke(Character.toUpperCase(kind), Character.isLowerCase(kind));
			before = Character.toUpperCase(kind);
			// Further pairs after a move are lines (SVG 1.1, 8.3.2).
			kind = kind == 'M' ? 'L' : kind == 'm' ? 'l' : kind;
		} while (scanner.atNumber());
	}

	private void stroke(char kind, boolean relative) throws SvgPathException {
		double fromX = relative ? x : 0;
		double fromY = relative ? y : 0;
		switch (kind) {
			case 'M' -> move(fromX + scanner.number(), fromY + scanner.number());
			case 'L' -> line(fromX + scanner.number(), fromY + scanner.number());
			case 'H' -> line(fromX + scanner.number(), y);
			case 'V' -> line(x, fromY + scanner.number());
			case 'C' -> cubic(fromX + scanner.number(), fromY + scanner.number(), fromX + scanner.number(), fromY + scanner.number(),
					fromX + scanner.number(), fromY + scanner.number());
			case 'S' -> cubic(reflectedX("CS"), reflectedY("CS"), fromX + scanner.number(), fromY + scanner.number(), //$NON-NLS-1$ //$NON-NLS-2$
					fromX + scanner.number(), fromY + scanner.number());
			case 'Q' -> quadratic(fromX + scanner.number(), fromY + scanner.number(), fromX + scanner.number(), fromY + scanner.number());
			case 'T' -> quadratic(reflectedX("QT"), reflectedY("QT"), fromX + scanner.number(), fromY + scanner.number()); //$NON-NLS-1$ //$NON-NLS-2$
			default -> arc(fromX, fromY);
		}
	}

	private double reflectedX(String after) {
		return after.indexOf(before) >= 0 ? 2 * x - handleX : x;
	}

	private double reflectedY(String after) {
		return after.indexOf(before) >= 0 ? 2 * y - handleY : y;
	}

	private void move(double toX, double toY) {
		pen = new TracePen(scale, toX, -toY);
		startX = toX;
		startY = toY;
		x = toX;
		y = toY;
	}

	private void line(double toX, double toY) {
		pen.lineTo(toX, -toY);
		x = toX;
		y = toY;
	}

	private void cubic(double x1, double y1, double x2, double y2, double toX, double toY) {
		pen.curveTo(x1, -y1, x2, -y2, toX, -toY);
		handleX = x2;
		handleY = y2;
		x = toX;
		y = toY;
	}

	/** A quadratic curve is the cubic whose handles lie two thirds of the way to its one. */
	private void quadratic(double x1, double y1, double toX, double toY) {
		cubic(x + (x1 - x) * 2 / 3, y + (y1 - y) * 2 / 3, toX + (x1 - toX) * 2 / 3, toY + (y1 - toY) * 2 / 3, toX, toY);
		handleX = x1;
		handleY = y1;
	}

	private void arc(double fromX, double fromY) throws SvgPathException {
		double rx = Math.abs(scanner.number());
		double ry = Math.abs(scanner.number());
		double turn = scanner.number();
		boolean large = scanner.flag();
		boolean positive = scanner.flag();
		double toX = fromX + scanner.number();
		double toY = fromY + scanner.number();
		new SvgArc(x, -y, toX, -toY, rx, ry, -Math.toRadians(turn), large, !positive).draw(pen);
		x = toX;
		y = toY;
	}
}
