// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import wainscribe.drawing.Role;
import wainscribe.model.FixtureType;

/** Outlines of mirrors, cabinets, pictures and appliances. */
record FurnitureSketch(Pencil pencil, Role body) {

	void draw(FixtureType type) {
		switch (type) {
			case MIRROR -> mirror();
			case CABINET -> cabinet();
			case SHELF -> shelf();
			case ART -> picture();
			case RANGE -> range();
			case COOKTOP -> cooktop();
			case HOOD -> hood();
			case WASHER -> washer();
			default -> appliance();
		}
	}

	private void mirror() {
		pencil.whole(Role.FIXTURE_GLASS);
		pencil.line(Role.FIXTURE_LINE, 0.12, 0.55, 0.4, 0.85);
		pencil.line(Role.FIXTURE_LINE, 0.2, 0.5, 0.5, 0.82);
	}

	private void cabinet() {
		pencil.whole(body);
		double inset = Math.min(0.1, 20 / pencil.shorter());
		if (pencil.area().width() > 500) {
			pencil.box(Role.FIXTURE_LINE, inset, inset, 0.5 - inset / 2, 1 - inset);
			pencil.box(Role.FIXTURE_LINE, 0.5 + inset / 2, inset, 1 - inset, 1 - inset);
		} else {
			pencil.box(Role.FIXTURE_LINE, inset, inset, 1 - inset, 1 - inset);
		}
	}

	private void shelf() {
		pencil.box(body, 0, 0.6, 1, 1);
		pencil.polygon(body, 0.08, 0, 0.11, 0, 0.13, 0.6, 0.08, 0.6);
		pencil.polygon(body, 0.89, 0, 0.92, 0, 0.92, 0.6, 0.87, 0.6);
	}

	private void picture() {
		pencil.whole(body);
		double inset = Math.min(0.2, 25 / pencil.shorter());
		pencil.box(Role.FIXTURE_LINE, inset, inset, 1 - inset, 1 - inset);
		pencil.polygon(Role.FIXTURE_LINE, 0.2, 0.3, 0.42, 0.62, 0.55, 0.45, 0.66, 0.55, 0.8, 0.3);
	}

	private void range() {
		pencil.whole(body);
		pencil.line(Role.FIXTURE_LINE, 0, 0.86, 1, 0.86);
		for (double x : new double[] { 0.14, 0.32, 0.5, 0.68, 0.86 }) {
			pencil.circle(Role.FIXTURE_LINE, x, 0.92, 0.025);
		}
		pencil.box(Role.FIXTURE_LINE, 0.08, 0.25, 0.92, 0.76);
		pencil.line(Role.FIXTURE_LINE, 0.08, 0.8, 0.92, 0.8);
		pencil.line(Role.FIXTURE_LINE, 0, 0.18, 1, 0.18);
	}

	private void cooktop() {
		pencil.whole(body);
		for (double x : new double[] { 0.2, 0.5, 0.8 }) {
			pencil.box(Role.FIXTURE_DARK, x - 0.1, 0.7, x + 0.1, 0.95);
		}
	}

	private void hood() {
		pencil.polygon(body, 0, 0, 1, 0, 0.66, 0.45, 0.34, 0.45);
		pencil.box(body, 0.34, 0.45, 0.66, 1);
		pencil.line(Role.FIXTURE_LINE, 0.05, 0.06, 0.95, 0.06);
	}

	private void washer() {
		pencil.rounded(body, 0, 0, 1, 1, 15);
		pencil.line(Role.FIXTURE_LINE, 0, 0.85, 1, 0.85);
		pencil.circle(Role.FIXTURE_LINE, 0.5, 0.45, 0.3);
		pencil.circle(Role.FIXTURE_LINE, 0.5, 0.45, 0.23);
	}

	private void appliance() {
		pencil.rounded(body, 0, 0, 1, 1, 15);
		pencil.line(Role.FIXTURE_LINE, 0, 0.68, 1, 0.68);
		pencil.line(Role.FIXTURE_LINE, 0.1, 0.72, 0.1, 0.82);
		pencil.line(Role.FIXTURE_LINE, 0.1, 0.5, 0.1, 0.64);
	}
}
