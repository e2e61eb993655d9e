// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.List;
import java.util.Optional;

/**
 * A solution of the master problem.
 *
 * @param cost      its cost, rounded by floating point
 * @param missing   how many pieces are missing, likewise
 * @param shares    patterns and how often they are used
 * @param cut       what its dual solution proves; empty if it was not asked for or the work was cut short
 */
record Relaxation(double cost, double missing, List<RestrictedMaster.Share> shares, Optional<DualCut> cut) {

	private static final double TINY = 1e-6;

	boolean isFeasible() {
		return missing < TINY;
	}
}
