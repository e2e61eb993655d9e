// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Role;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;

/** Outlines of what gives heat or air. */
record HeatingSketch(Pencil pencil, Role body) {

	private static final double COLUMN_PITCH = 55;
	private static final double SLOT_PITCH = 22;
	private static final int MOST_LINES = 60;

	void draw(Fixture fixture) {
		switch (fixture.getType()) {
			case RADIATOR -> radiator();
			case FIREPLACE -> fireplace(fixture);
			case HEATER -> heater();
			default -> grille(fixture.getType());
		}
	}

	private void radiator() {
		int columns = count(pencil.area().width(), COLUMN_PITCH);
		double pitch = 1.0 / columns;
		for (int column = 0; column < columns; column++) {
			pencil.rounded(body, column * pitch + pitch * 0.06, 0.08, (column + 1) * pitch - pitch * 0.06, 1, COLUMN_PITCH);
		}
		pencil.line(Role.FIXTURE_LINE, 0, 0.88, 1, 0.88);
		pencil.line(Role.FIXTURE_LINE, 0, 0.18, 1, 0.18);
		pencil.box(Role.FIXTURE_METAL, pitch * 0.3, 0, pitch * 0.7, 0.08);
		pencil.box(Role.FIXTURE_METAL, 1 - pitch * 0.7, 0, 1 - pitch * 0.3, 0.08);
	}

	private void heater() {
		pencil.rounded(body, 0, 0, 1, 1, 10);
		int slots = count(pencil.area().height() * 0.6, SLOT_PITCH * 1.6);
		for (int slot = 0; slot < slots; slot++) {
			double y = 0.2 + 0.6 * (slot + 0.5) / slots;
			pencil.line(Role.FIXTURE_LINE, 0.06, y, 0.94, y);
		}
	}

	private void grille(FixtureType type) {
		pencil.whole(body);
		boolean upright = type == FixtureType.REGISTER;
		int slots = count(upright ? pencil.area().width() : pencil.area().height(), SLOT_PITCH);
		for (int slot = 0; slot < slots; slot++) {
			double from = 0.08 + 0.84 * (slot + 0.2) / slots;
			double to = 0.08 + 0.84 * (slot + 0.8) / slots;
			if (upright) {
				pencil.box(Role.FIXTURE_DARK, from, 0.14, to, 0.86);
			} else {
				pencil.box(Role.FIXTURE_DARK, 0.06, from, 0.94, to);
			}
		}
	}

	private void fireplace(Fixture fixture) {
		pencil.whole(body);
		Bounds area = pencil.area();
		if (fixture.getOpeningWidth() != null && fixture.getOpeningHeight() != null && fixture.getOpeningX() != null) {
			double x = (fixture.getOpeningX().approximateMillimetres() - area.x0()) / area.width();
			double width = fixture.getOpeningWidth().approximateMillimetres() / area.width();
			double height = fixture.getOpeningHeight().approximateMillimetres() / area.height();
			fire(Math.clamp(x, 0, 1), Math.clamp(x + width, 0, 1), Math.clamp(height, 0, 1));
		} else {
			fire(0.22, 0.78, 0.7);
		}
		pencil.line(Role.FIXTURE_LINE, 0, 0.94, 1, 0.94);
	}

	private void fire(double from, double to, double height) {
		pencil.box(Role.FIXTURE_DARK, from, 0, to, height);
	}

	private static int count(double length, double pitch) {
		return Math.clamp(Math.round(length / pitch), 2, MOST_LINES);
	}
}
