// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Moves everything that one object holds into another of the same class. */
final class RoomContents {

	private RoomContents() {
	}

	/**
	 * Empties one object into another, whose own contents are given up.
	 *
	 * @param from left empty
	 * @param to   keeps its identity and its file
	 */
	static <T extends EObject> void move(T from, T to) {
		for (EStructuralFeature feature : to.eClass().getEAllStructuralFeatures()) {
			if (!feature.isChangeable() || feature.isDerived()) {
				continue;
			}
			if (from.eIsSet(feature)) {
				Object value = from.eGet(feature);
				to.eSet(feature, value instanceof List<?> list ? new ArrayList<>(list) : value);
			} else {
				to.eUnset(feature);
			}
		}
	}
}
