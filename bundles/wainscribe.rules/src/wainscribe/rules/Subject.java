// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.util.Objects;

import org.eclipse.emf.ecore.EObject;

import wainscribe.layout.Member;
import wainscribe.model.Element;
import wainscribe.model.Finish;
import wainscribe.model.Paint;
import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.SurfaceZone;
import wainscribe.model.Wall;

/**
 * What a finding is about.
 *
 * @param wall    name of the wall, empty for a whole room
 * @param element name as {@link Finding#element()} wants it
 * @param id      stable id as {@link Finding#elementId()} wants it
 * @param object  what to select
 */
public record Subject(String wall, String element, String id, EObject object) {

	/** Name of the rail in findings. */
	public static final String RAIL = "rail"; //$NON-NLS-1$
	/** Name of the base in findings. */
	public static final String BASE = "base"; //$NON-NLS-1$

	/** Refuses nulls. */
	public Subject {
		Objects.requireNonNull(wall);
		Objects.requireNonNull(element);
		Objects.requireNonNull(id);
		Objects.requireNonNull(object);
	}

	/** The whole room. */
	public static Subject of(Room room) {
		return new Subject("", "", identity(room), room); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** A whole wall. */
	public static Subject of(Wall wall) {
		return new Subject(name(wall), "", identity(wall), wall); //$NON-NLS-1$
	}

	/** A surveyed thing on a wall. */
	public static Subject of(Placed placed) {
		String wall = placed.eContainer() instanceof Wall on ? name(on) : ""; //$NON-NLS-1$
		return new Subject(wall, SurveyedName.of(placed), identity(placed), placed);
	}

	/** A derived frame or strip. */
	public static Subject of(Wall wall, Member member) {
		return new Subject(name(wall), member.id(), identity(wall) + '/' + member.id(), wall);
	}

	/** The rail on a wall. */
	public static Subject rail(Wall wall) {
		return new Subject(name(wall), RAIL, identity(wall) + '/' + RAIL, wall);
	}

	/** The base on a wall. */
	public static Subject base(Wall wall) {
		return new Subject(name(wall), BASE, identity(wall) + '/' + BASE, wall);
	}

	/** A coating that is to come. */
	public static Subject of(Paint paint) {
		return new Subject("", name(paint, paint.getZone()), identity(paint), paint); //$NON-NLS-1$
	}

	/** A coating that is there. */
	public static Subject of(Finish finish) {
		return new Subject("", name(finish, finish.getZone()), identity(finish), finish); //$NON-NLS-1$
	}

	/** A coating without a name goes by its surface. */
	private static String name(Element coating, SurfaceZone zone) {
		return name(coating).isBlank() && zone != null ? zone.getSurface().getLiteral() : name(coating);
	}

	private static String name(Element element) {
		return element.getName() == null ? "" : element.getName(); //$NON-NLS-1$
	}

	private static String identity(Element element) {
		return element.getId() == null ? name(element) : element.getId();
	}
}
