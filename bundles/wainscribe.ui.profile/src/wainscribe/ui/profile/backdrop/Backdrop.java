// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.backdrop;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

import wainscribe.profile.section.Spot;

/**
 * A picture of a section behind the drawing. It is only looked at, so its place is floating point.
 *
 * @param file  the picture
 * @param scale millimetres for a pixel of the picture, above 0
 * @param up    height of its lower edge over the origin in millimetres
 * @param out   distance of its left edge from the wall line in millimetres
 * @param seen  false while it is hidden
 */
public record Backdrop(Path file, double scale, double up, double out, boolean seen) {

	private static final int PARTS = 5;
	private static final String BETWEEN = "|"; //$NON-NLS-1$

	/** Refuses null and a scale that is none. */
	public Backdrop {
		Objects.requireNonNull(file);
		if (!(scale > 0) || Double.isInfinite(scale) || !Double.isFinite(up) || !Double.isFinite(out)) {
			throw new IllegalArgumentException("a backdrop needs a scale above nought and a place"); //$NON-NLS-1$
		}
	}

	/** Returns the backdrop at another place. */
	public Backdrop movedBy(double dUp, double dOut) {
		return new Backdrop(file, scale, up + dUp, out + dOut, seen);
	}

	/** Returns the backdrop shown or hidden. */
	public Backdrop seen(boolean other) {
		return new Backdrop(file, scale, up, out, other);
	}

	/**
	 * Returns the backdrop at the scale at which two points of the picture are a real distance apart. The first point stays
	 * where it is.
	 *
	 * @param first  a point on the desk
	 * @param second another point
	 * @param real   what is between them in millimetres, above 0
	 */
	public Backdrop scaled(Spot first, Spot second, double real) {
		double factor = real / first.distanceTo(second);
		return new Backdrop(file, scale * factor, first.x() + (up - first.x()) * factor, first.y() + (out - first.y()) * factor, seen);
	}

	/** Writes it in one line. */
	public String text() {
		return scale + BETWEEN + up + BETWEEN + out + BETWEEN + seen + BETWEEN + file;
	}

	/** Reads what {@link #text()} wrote; empty if it is nothing of the kind. */
	public static Optional<Backdrop> read(String text) {
		String[] parts = text == null ? new String[0] : text.split("\\|", PARTS); //$NON-NLS-1$
		if (parts.length != PARTS) {
			return Optional.empty();
		}
		try {
			return Optional.of(new Backdrop(Path.of(parts[4]), Double.parseDouble(parts[0]), Double.parseDouble(parts[1]),
					Double.parseDouble(parts[2]), Boolean.parseBoolean(parts[3])));
		} catch (IllegalArgumentException e) {
			// a note of the workspace that is damaged is no note
			return Optional.empty();
		}
	}
}
