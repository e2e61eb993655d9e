// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

import java.util.List;

import wainscribe.profile.section.Segment;

/** An entity with its groups; codes as in the DXF reference: 10 and 20 a point, 11 and 21 a second, 40 a radius, 50 and 51 angles. */
record DxfEntity(int row, String name, List<DxfGroup> groups) {

	/** Returns the number of a group; the first of several. */
	double number(int code) throws DxfEntityException {
		for (DxfGroup group : groups) {
			if (group.code() == code) {
				return number(group);
			}
		}
		throw new DxfEntityException("no group " + code + "; the entity is not complete"); //$NON-NLS-1$ //$NON-NLS-2$
	}

	static double number(DxfGroup group) throws DxfEntityException {
		try {
			return Double.parseDouble(group.value());
		} catch (NumberFormatException e) {
			throw (DxfEntityException) new DxfEntityException("\"" + group.value() + "\" in row " + (group.row() + 1) + "; expected a number") //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					.initCause(e);
		}
	}

	/** Returns whether bit 1 of the flags is set: a closed polyline. */
	boolean isClosed() throws DxfEntityException {
		for (DxfGroup group : groups) {
			if (group.code() == 70) {
				return ((int) number(group) & 1) == 1;
			}
		}
		return false;
	}

	List<Segment> line(double scale) throws DxfEntityException {
		TracePen pen = new TracePen(scale, number(10), number(20));
		pen.lineTo(number(11), number(21));
		return drawn(pen);
	}

	/** An arc runs anticlockwise from the first angle to the second, so its middle lies right of the way. */
	List<Segment> arc(double scale) throws DxfEntityException {
		double radius = number(40);
		double from = Math.toRadians(number(50));
		double sweep = Math.toRadians(((number(51) - number(50)) % 360 + 360) % 360);
		if (!(radius > 0) || sweep == 0) {
			throw new DxfEntityException("no radius or no angle; expected an arc of part of a circle"); //$NON-NLS-1$
		}
		double x = number(10);
		double y = number(20);
		TracePen pen = new TracePen(scale, x + radius * Math.cos(from), y + radius * Math.sin(from));
		pen.arcTo(x + radius * Math.cos(from + sweep), y + radius * Math.sin(from + sweep), -radius * (1 - Math.cos(sweep / 2)));
		return drawn(pen);
	}

	static List<Segment> drawn(TracePen pen) throws DxfEntityException {
		if (pen.segments().isEmpty()) {
			throw new DxfEntityException("of no length in the unit asked"); //$NON-NLS-1$
		}
		return pen.segments();
	}
}
