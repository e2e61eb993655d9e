// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.EnumSet;
import java.util.Set;

import wainscribe.model.InsideJoint;
import wainscribe.model.Material;

/**
 * Chooses how two runs meet in a corner, by common practice: in inside corners near square the longer piece runs through to
 * the corner and the shorter one is coped over it, as a piece coped at both ends has to fit exactly and a short one is easier
 * to fit; other corners are mitred at half the measured angle; free ends are returned to the wall.
 *
 * @param inside  what the brief wants in inside corners
 * @param coped   whether material and section of the run can be coped
 * @param blocked whether runs of this kind stop at corner blocks if the brief wants blocks
 */
record CornerJoints(InsideJoint inside, boolean coped, boolean blocked) {

	/** Inside corners this far from square are still coped; common practice. */
	private static final double COPED_WITHIN = 10;
	private static final double SQUARE = 90;
	private static final double STRAIGHT = 180;
	private static final double RETURNED = 135;
	private static final double NEARLY = 0.05;
	/** Foam, plaster and metal are not coped with a saw on site; common practice. */
	private static final Set<Material> NOT_COPED = EnumSet.of(Material.POLYURETHANE, Material.PLASTER, Material.METAL);

	/** Tells whether mouldings of a material are coped on site. */
	static boolean isCoped(Material material) {
		return !NOT_COPED.contains(material);
	}

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

		/** Returns a mitre into a short return, the face reaching the end. */
		static Cut returned() {
			return new Cut(Joint.RETURN, RETURNED);
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
			case NOTHING -> Cut.returned();
		};
	}

	private static Cut outside(double corner, Meeting meeting) {
		return meeting == Meeting.NEW ? new Cut(Joint.OUTSIDE_MITRE, corner / 2) : Cut.returned();
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
	 * @param through whether this run goes through to the corner where the other is coped
	 */
	Cut at(double corner, Meeting meeting, boolean through) {
		if (isStraight(corner) || corner > STRAIGHT) {
			return isStraight(corner) ? inLine(meeting) : outside(corner, meeting);
		}
		if (meeting == Meeting.NOTHING) {
			return new Cut(Joint.BUTT_TO_WALL, corner);
		}
		if (meeting == Meeting.KEPT) {
			return coped ? new Cut(Joint.COPE, corner / 2) : new Cut(Joint.BUTT_TO_TRIM, corner);
		}
		if (takesBlock(corner)) {
			return Cut.square(Joint.BUTT_TO_BLOCK);
		}
		if (!coped || inside == InsideJoint.MITRE || isFarFromSquare(corner)) {
			return new Cut(Joint.INSIDE_MITRE, corner / 2);
		}
		return through ? new Cut(Joint.BUTT_TO_WALL, corner) : new Cut(Joint.COPE, corner / 2);
	}

	private boolean takesBlock(double corner) {
		return blocked && inside == InsideJoint.BLOCK && !isFarFromSquare(corner);
	}

	private static boolean isFarFromSquare(double corner) {
		return Math.abs(corner - SQUARE) > COPED_WITHIN;
	}
}
