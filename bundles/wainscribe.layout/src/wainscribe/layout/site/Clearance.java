// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.Set;

import wainscribe.model.Material;

/** Distances that a combustible moulding keeps from heat. Local codes and the appliance's instructions decide. */
final class Clearance {

	/** From an electric heater, all round: 305 mm (12 in; fire department and heater guides). */
	static final long HEATER = 305L * 8000;
	/** Above a range or cooktop: 762 mm (30 in; IRC M1901.1). */
	static final long ABOVE_RANGE = 762L * 8000;
	/** Round a fireplace opening: 152 mm (6 in; IRC R1001.11). */
	static final long FIREPLACE_OPENING = 152L * 8000;

	private static final Set<Material> INCOMBUSTIBLE = Set.of(Material.PLASTER, Material.METAL);

	private Clearance() {
	}

	/** Tells whether a moulding of a material can burn; one not recorded is taken to. */
	static boolean isCombustible(Material material) {
		return !INCOMBUSTIBLE.contains(material);
	}
}
