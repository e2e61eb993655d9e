// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import wainscribe.drawing.Palette;
import wainscribe.drawing.Tone;
import wainscribe.model.Home;
import wainscribe.model.Paint;
import wainscribe.model.Primer;
import wainscribe.model.Room;
import wainscribe.model.Surface;
import wainscribe.model.Wall;

/**
 * The paints that hold in a room: its own, and those of the home for surfaces for which it has none.
 *
 * @param paints own ones first
 */
record RoomColours(List<Paint> paints) {

	private static final int USUAL_COATS = 2;

	static RoomColours of(Home home, Room room) {
		List<Paint> all = new ArrayList<>(room.getPaints());
		Set<Surface> own = EnumSet.noneOf(Surface.class);
		room.getPaints().forEach(paint -> own.add(surface(paint)));
		home.getPaints().stream().filter(paint -> !own.contains(surface(paint))).forEach(all::add);
		return new RoomColours(List.copyOf(all));
	}

	private static Surface surface(Paint paint) {
		return paint.getZone() == null || paint.getZone().getSurface() == null ? Surface.WALLS : paint.getZone().getSurface();
	}

	/** Returns the colours in which a wall will be seen; what has no colour yet stays as paper shows it. */
	Palette palette(Wall wall) {
		Tone walls = tone(Surface.WALLS, wall);
		Tone upper = tone(Surface.UPPER, wall);
		Tone lower = tone(Surface.LOWER, wall);
		return Palette.paper().painted(upper == null ? walls : upper, lower == null ? walls : lower, tone(Surface.TRIM, wall));
	}

	boolean hasColours(Wall wall) {
		return paints.stream().anyMatch(paint -> goesOn(paint, wall) && Tone.isHex(paint.getColour()));
	}

	/** Returns the colour of a surface, null if none was chosen. */
	private Tone tone(Surface surface, Wall wall) {
		return paints.stream().filter(paint -> surface(paint) == surface && goesOn(paint, wall))
				.filter(paint -> Tone.isHex(paint.getColour())).findFirst().map(paint -> Tone.parse(paint.getColour()))
				.orElse(null);
	}

	private static boolean goesOn(Paint paint, Wall wall) {
		return paint.getZone() == null || paint.getZone().getWalls().isEmpty()
				|| paint.getZone().getWalls().contains(wall.getName());
	}

	List<PaintView> views() {
		return paints.stream().map(RoomColours::view).toList();
	}

	private static PaintView view(Paint paint) {
		List<String> details = new ArrayList<>();
		details.add(Wording.words(paint.getGloss()).equals("unrecorded") ? "" : "gloss " + paint.getGloss().getLiteral());
		details.add(Wording.words(paint.getBinder()).equals("unrecorded") ? "" : Wording.words(paint.getBinder()));
		details.add((paint.getCoats() == null ? USUAL_COATS : paint.getCoats()) + " coats");
		details.add(Boolean.TRUE.equals(paint.getClean()) ? "clean first" : "");
		details.add(Boolean.TRUE.equals(paint.getDegloss()) ? "dull the surface first" : "");
		details.add(paint.getPrimer() == Primer.BONDING ? "bonding primer" : "");
		details.removeIf(String::isEmpty);
		String walls = paint.getZone() == null || paint.getZone().getWalls().isEmpty() ? ""
				: " (" + String.join(", ", paint.getZone().getWalls()) + ")";
		return new PaintView(Wording.text(paint.getName()), Wording.sentence(surfaceWords(surface(paint))) + walls,
				Tone.isHex(paint.getColour()) ? paint.getColour() : "", String.join(", ", details));
	}

	private static String surfaceWords(Surface surface) {
		return switch (surface) {
			case LOWER -> "wall below the rail";
			case UPPER -> "wall above the rail";
			default -> Wording.words(surface);
		};
	}
}
