// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.merge;

import wainscribe.model.Element;

/**
 * Where changes happen, for naming them.
 *
 * @param room name of the room, empty for the whole home
 * @param wall name of the wall, empty for a whole room
 */
record Place(String room, String wall) {

	/** Returns the path of an element under the room. */
	String path(Element element) {
		String name = element.getName() == null ? ElementKey.kind(element) : element.getName();
		return wall.isEmpty() ? name : wall + " / " + name; //$NON-NLS-1$
	}
}
