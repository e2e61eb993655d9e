// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.Path;
import wainscribe.drawing.Role;
import wainscribe.drawing.Subject;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;

/** Draws fixtures as simple outlines that fill exactly the measured rectangle. */
final class FixtureSketch {

	private final Sheet sheet;
	private final WallLines lines;

	FixtureSketch(Sheet sheet, WallLines lines) {
		this.sheet = sheet;
		this.lines = lines;
	}

	void draw(Fixture fixture) {
		Bounds outline = Sketches.bounds(fixture);
		if (outline.width() <= 0 || outline.height() <= 0) {
			return;
		}
		Pencil pencil = new Pencil(sheet, LayerName.FIXTURE, Subject.element(fixture.getId()), outline);
		Role body = Boolean.TRUE.equals(fixture.getPlanned()) ? Role.FIXTURE_PLANNED : Role.FIXTURE;
		if (fixture.getType() == FixtureType.HANDRAIL && lines.isFloorSloped()) {
			raked(fixture, outline, body);
			return;
		}
		switch (fixture.getType()) {
			case TOILET, BIDET, VANITY, BASIN, SINK, TUB, SHOWER -> new SanitarySketch(pencil, body).draw(fixture.getType());
			case TOWEL_BAR, TOWEL_RING, ROBE_HOOK, TP_HOLDER, GRAB_BAR, SCONCE, THERMOSTAT, KEYPAD, HANDRAIL ->
				new AccessorySketch(pencil, body).draw(fixture.getType());
			case HEATER, RADIATOR, REGISTER, GRILLE, FIREPLACE -> new HeatingSketch(pencil, body).draw(fixture);
			default -> new FurnitureSketch(pencil, body).draw(fixture.getType());
		}
	}

	/** On stairs a handrail follows the nosings. */
	private void raked(Fixture fixture, Bounds outline, Role body) {
		double bottom = TreatmentSketch.millimetres(fixture.getY());
		sheet.add(LayerName.FIXTURE, Path.polygon(Subject.element(fixture.getId()), body,
				lines.overFloor(new Span(outline.x0(), outline.x1()), bottom, bottom + outline.height())));
	}
}
