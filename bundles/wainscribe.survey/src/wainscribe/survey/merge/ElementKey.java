// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.merge;

import java.util.HashMap;
import java.util.Map;

import wainscribe.model.Box;
import wainscribe.model.Diagonal;
import wainscribe.model.Element;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Finish;
import wainscribe.model.Fixture;
import wainscribe.model.Opening;
import wainscribe.model.Paint;
import wainscribe.model.Service;
import wainscribe.model.SurfaceZone;
import wainscribe.model.Wall;

/**
 * Finds the same thing in two surveys of a room: by its name, or as the n-th nameless thing of its kind. Makes the keys of
 * one list, asked in the order of the list.
 */
final class ElementKey {

	private final Map<String, Integer> seen = new HashMap<>();

	/** Returns the key of the next element of the list. */
	String next(Element element) {
		String key = element.getName() == null ? "nameless\n" + kind(element) : "named\n" + element.getName(); //$NON-NLS-1$ //$NON-NLS-2$
		String whole = key + '\n' + place(element);
		return whole + '\n' + seen.merge(whole, 1, Integer::sum);
	}

	/** Returns what the element is, in the words of the survey. */
	static String kind(Element element) {
		return switch (element) {
			case Opening opening -> opening.getKind().getLiteral();
			case Fixture fixture -> fixture.getType().getLiteral();
			case ExistingTrim trim -> trim.getType().getLiteral();
			case Service service -> service.getKind().getLiteral();
			case Box box -> box.getType().getLiteral().equals("unrecorded") ? "box" : box.getType().getLiteral(); //$NON-NLS-1$ //$NON-NLS-2$
			case Wall wall -> "wall"; //$NON-NLS-1$
			default -> element.eClass().getName().toLowerCase(java.util.Locale.ROOT);
		};
	}

	private static String place(Element element) {
		return switch (element) {
			case Finish finish -> zone(finish.getZone());
			case Paint paint -> zone(paint.getZone());
			case Diagonal diagonal -> name(diagonal.getFrom()) + '\n' + name(diagonal.getTo());
			default -> ""; //$NON-NLS-1$
		};
	}

	private static String zone(SurfaceZone zone) {
		return zone == null ? "" : zone.getSurface() + "\n" + zone.getWalls(); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static String name(Wall wall) {
		return wall == null ? "" : wall.getName(); //$NON-NLS-1$
	}
}
