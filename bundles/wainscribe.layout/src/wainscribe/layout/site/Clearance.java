// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import wainscribe.layout.clearance.Blockers;
import wainscribe.model.Material;

/** Whether mouldings mind heat. */
final class Clearance {

	private Clearance() {
	}

	/** Tells whether a moulding of a material can burn; one not recorded is taken to. */
	static boolean isCombustible(Material material) {
		return Blockers.isCombustible(material);
	}
}
