// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tools;

import java.util.HashSet;
import java.util.Set;

import wainscribe.commands.ElementWords;
import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Element;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Home;
import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;

/**
 * Makes new things in their usual size, named so that the name is new in the room. Sizes of fixtures are common practice,
 * rounded; they are changed by a number in the property sheet.
 */
public final class NewThings {

	// one gang plates as the survey knows them: US 70 x 114 mm, UK and IE 86 x 86 mm
	private static final int PLATE_WIDTH = 70;
	private static final int PLATE_HEIGHT = 114;
	private static final int SQUARE_PLATE = 86;
	private static final Set<String> SQUARE_PLATES = Set.of("UK", "IE"); //$NON-NLS-1$ //$NON-NLS-2$

	private final Home home;
	private final Room room;

	/**
	 * Creates a maker.
	 *
	 * @param home decides the size of plates
	 * @param room decides which names are taken
	 */
	public NewThings(Home home, Room room) {
		this.home = home;
		this.room = room;
	}

	/** Makes a box with a plate of one gang. */
	public Placed box(BoxType type) {
		Box box = WainscribeFactory.eINSTANCE.createBox();
		box.setType(type);
		box.setGang(1);
		boolean square = home.getCountry() != null && SQUARE_PLATES.contains(home.getCountry());
		return named(sized(box, square ? SQUARE_PLATE : PLATE_WIDTH, square ? SQUARE_PLATE : PLATE_HEIGHT),
				ElementWords.of(type));
	}

	/** Makes a fixture that is not there yet: part of the design. */
	public Placed fixture(FixtureType type) {
		Fixture fixture = WainscribeFactory.eINSTANCE.createFixture();
		fixture.setType(type);
		fixture.setPlanned(true);
		Placed sized = switch (type) {
			case TOWEL_BAR -> sized(fixture, 610, 60);
			case TOWEL_RING -> sized(fixture, 160, 180);
			case ROBE_HOOK -> sized(fixture, 50, 80);
			case TP_HOLDER -> sized(fixture, 150, 90);
			case GRAB_BAR -> sized(fixture, 610, 80);
			case SCONCE -> sized(fixture, 120, 300);
			case MIRROR -> sized(fixture, 600, 900);
			case SHELF -> sized(fixture, 800, 30);
			case ART -> sized(fixture, 500, 400);
			case CABINET -> sized(fixture, 600, 720);
			case RADIATOR -> sized(fixture, 800, 600);
			default -> sized(fixture, 300, 300);
		};
		return named(sized, ElementWords.of(type));
	}

	private static Placed sized(Placed element, int width, int height) {
		element.setWidth(Length.ofMillimetres(width));
		element.setHeight(Length.ofMillimetres(height));
		return element;
	}

	private Placed named(Placed element, String word) {
		Set<String> taken = new HashSet<>();
		room.eAllContents().forEachRemaining(object -> {
			if (object instanceof Element other) {
				taken.add(other.getName());
			}
		});
		int number = 1;
		while (taken.contains(word + ' ' + number)) {
			number++;
		}
		element.setName(word + ' ' + number);
		return element;
	}
}
