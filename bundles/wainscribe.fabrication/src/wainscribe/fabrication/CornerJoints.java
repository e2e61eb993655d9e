// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.EnumSet;
import java.util.Set;

import wainscribe.model.Material;

/**
 * Chooses how two runs meet in a corner, by common practice: inside corners near square are coped, the wall walked first
 * running through to the corner; others are mitred at half the measured angle.
 */
record CornerJoints(Material material) {

	/** Inside corners this far from square are still coped; common practice. */
	private static final double COPED_WITHIN = 10;
	private static final double SQUARE = 90;
	private static final double STRAIGHT = 180;
	private static final double NEARLY = 0.05;
	/** Foam, plaster and metal are not coped with a saw on site; common practice. */
	private static final Set<Material> NOT_COPED = EnumSet.of(Material.POLYURETHANE, Material.PLASTER, Material.METAL);

	/** What a run meets round a corner. */
	enum Meeting {
		/** The other wall is bare there. */
		NOTHING,
		/** The same run goes on. */
		NEW,
		/** Moulding of its kind that stays: it is not cut any more, so the new piece is fitted to it. */
		KEPT
	}

	/**
	 * A joint and its cut.
	 *
	 * @param joint  what the end meets
	 * @param angle  angle between cut and wall seen on plan, in degrees, above 0 and under 180; 90 is square
	 * @param across turn of the cut across the face from square, in degrees, above 0 if it leans to the right going up
	 */
	record Cut(Joint joint, double angle, double across) {
		Cut(Joint joint, double angle) {
			this(joint, angle, 0);
		}

		static Cut square(Joint joint) {
			return new Cut(joint, SQUARE);
		}

		/** Returns the same joint cut plumb on a piece of the given pitch. */
		Cut plumb(double pitch) {
			return new Cut(joint, angle, pitch);
		}

		/** Returns a mitre between two pitches in one plane. */
		static Cut rake(double pitch, double other) {
			return new Cut(Joint.RAKE_MITRE, SQUARE, (pitch - other) / 2);
		}
	}

	private static Cut inLine(Meeting meeting) {
		return switch (meeting) {
			case NEW -> Cut.square(Joint.IN_LINE);
			case KEPT -> Cut.square(Joint.BUTT_TO_TRIM);
			case NOTHING -> Cut.square(Joint.SQUARE_END);
		};
	}

	private static Cut outside(double corner, Meeting meeting) {
		return meeting == Meeting.NEW ? new Cut(Joint.OUTSIDE_MITRE, corner / 2) : Cut.square(Joint.SQUARE_END);
	}

	/** Tells whether two walls stand in one plane. */
	static boolean isStraight(double corner) {
		return Math.abs(corner - STRAIGHT) < NEARLY;
	}

	/**
	 * Returns the end of a run in a corner.
	 *
	 * @param corner  inside angle in degrees
	 * @param meeting what the run meets on the other wall
	 * @param first   whether this wall is walked before the other
	 */
	Cut at(double corner, Meeting meeting, boolean first) {
		if (isStraight(corner) || corner > STRAIGHT) {
			return isStraight(corner) ? inLine(meeting) : outside(corner, meeting);
		}
		if (meeting == Meeting.NOTHING) {
			return new Cut(Joint.BUTT_TO_WALL, corner);
		}
		if (meeting == Meeting.KEPT) {
			return NOT_COPED.contains(material) ? new Cut(Joint.BUTT_TO_TRIM, corner) : new Cut(Joint.COPE, corner / 2);
		}
		if (NOT_COPED.contains(material) || Math.abs(corner - SQUARE) > COPED_WITHIN) {
			return new Cut(Joint.INSIDE_MITRE, corner / 2);
		}
		return first ? new Cut(Joint.BUTT_TO_WALL, corner) : new Cut(Joint.COPE, corner / 2);
	}
}
