// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import org.eclipse.emf.ecore.EReference;

import wainscribe.model.Box;
import wainscribe.model.Element;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Fixture;
import wainscribe.model.Opening;
import wainscribe.model.Placed;
import wainscribe.model.PlacedFrame;
import wainscribe.model.Service;
import wainscribe.model.WainscribePackage.Literals;

/** Says in which list of a wall a thing is kept. */
final class WallPlace {

	private WallPlace() {
	}

	/** @throws IllegalArgumentException for a thing that no wall keeps */
	static EReference of(Placed element) {
		return switch (element) {
			case Opening opening -> Literals.WALL__OPENINGS;
			case Fixture fixture -> Literals.WALL__FIXTURES;
			case Box box -> Literals.WALL__BOXES;
			case ExistingTrim trim -> Literals.WALL__TRIMS;
			case Service service -> Literals.WALL__SERVICES;
			case PlacedFrame frame -> Literals.WALL__PLACED_FRAMES;
			default -> throw new IllegalArgumentException("no wall keeps this: " + describe(element)); //$NON-NLS-1$
		};
	}

	private static String describe(Element element) {
		return element.eClass().getName();
	}
}
