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

	/**
	 * A joint and the angle between its cut and the wall, seen on plan; 90 is a square cut.
	 *
	 * @param joint what the end meets
	 * @param angle in degrees, above 0 and under 180
	 */
	record Cut(Joint joint, double angle) {
		static Cut square(Joint joint) {
			return new Cut(joint, SQUARE);
		}
	}

	/**
	 * Returns the end of a run in a corner.
	 *
	 * @param corner         inside angle in degrees
	 * @param meetsNeighbour whether the run on the other wall reaches the corner as well
	 * @param first          whether this wall is walked before the other
	 */
	Cut at(double corner, boolean meetsNeighbour, boolean first) {
		if (Math.abs(corner - STRAIGHT) < NEARLY) {
			return Cut.square(Joint.SQUARE_END);
		}
		if (corner > STRAIGHT) {
			return meetsNeighbour ? new Cut(Joint.OUTSIDE_MITRE, corner / 2) : Cut.square(Joint.SQUARE_END);
		}
		if (!meetsNeighbour) {
			return new Cut(Joint.BUTT_TO_WALL, corner);
		}
		if (NOT_COPED.contains(material) || Math.abs(corner - SQUARE) > COPED_WITHIN) {
			return new Cut(Joint.INSIDE_MITRE, corner / 2);
		}
		return first ? new Cut(Joint.BUTT_TO_WALL, corner) : new Cut(Joint.COPE, corner / 2);
	}
}
