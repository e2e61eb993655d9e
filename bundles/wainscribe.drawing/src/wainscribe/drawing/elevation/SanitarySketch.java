// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import wainscribe.drawing.Role;
import wainscribe.model.FixtureType;

/** Outlines of what has a water pipe. */
record SanitarySketch(Pencil pencil, Role body) {

	private static final double ROUND = 60;

	void draw(FixtureType type) {
		switch (type) {
			case TOILET -> toilet();
			case BIDET -> bidet();
			case VANITY -> vanity();
			case BASIN -> basin();
			case SINK -> sink();
			case TUB -> tub();
			default -> shower();
		}
	}

	private void toilet() {
		pencil.polygon(body, 0.3, 0, 0.7, 0, 0.74, 0.3, 0.26, 0.3);
		pencil.rounded(body, 0.08, 0.26, 0.92, 0.5, ROUND);
		pencil.rounded(body, 0.04, 0.48, 0.96, 0.53, ROUND);
		pencil.rounded(body, 0, 0.53, 1, 0.96, ROUND / 3);
		pencil.box(body, 0, 0.94, 1, 1);
		pencil.circle(Role.FIXTURE_METAL, 0.5, 0.86, 0.035);
	}

	private void bidet() {
		pencil.polygon(body, 0.28, 0, 0.72, 0, 0.8, 0.5, 0.2, 0.5);
		pencil.rounded(body, 0, 0.5, 1, 0.9, ROUND);
		pencil.box(Role.FIXTURE_METAL, 0.44, 0.9, 0.56, 1);
	}

	private void vanity() {
		pencil.box(body, 0.02, 0, 0.98, 0.94);
		pencil.box(body, 0, 0.94, 1, 1);
		pencil.line(Role.FIXTURE_LINE, 0.02, 0.1, 0.98, 0.1);
		int doors = pencil.area().width() > 900 ? 3 : 2;
		for (int door = 0; door < doors; door++) {
			double from = 0.05 + door * 0.9 / doors;
			pencil.box(Role.FIXTURE_LINE, from + 0.01, 0.14, from + 0.9 / doors - 0.01, 0.88);
		}
	}

	private void basin() {
		pencil.polygon(body, 0.36, 0, 0.64, 0, 0.6, 0.62, 0.4, 0.62);
		pencil.rounded(body, 0.04, 0.6, 0.96, 0.9, ROUND * 2);
		pencil.box(body, 0, 0.84, 1, 0.93);
		pencil.box(Role.FIXTURE_METAL, 0.47, 0.93, 0.53, 1);
	}

	private void sink() {
		pencil.box(body, 0, 0.86, 1, 1);
		pencil.polygon(body, 0.08, 0.86, 0.92, 0.86, 0.86, 0.1, 0.14, 0.1);
		pencil.box(Role.FIXTURE_METAL, 0.46, 0, 0.54, 0.1);
	}

	private void tub() {
		pencil.box(body, 0, 0, 1, 0.92);
		pencil.rounded(body, 0, 0.9, 1, 1, ROUND / 2);
		pencil.rounded(Role.FIXTURE_LINE, 0.06, 0.12, 0.94, 0.78, ROUND);
	}

	private void shower() {
		pencil.whole(Role.FIXTURE_GLASS);
		pencil.box(body, 0, 0, 1, 0.045);
		pencil.line(Role.FIXTURE_LINE, 0.5, 0.045, 0.5, 1);
		pencil.box(Role.FIXTURE_METAL, 0.46, 0.42, 0.475, 0.58);
		pencil.polygon(Role.FIXTURE_METAL, 0.16, 0.86, 0.32, 0.86, 0.27, 0.89, 0.21, 0.89);
		pencil.line(Role.FIXTURE_LINE, 0.24, 0.89, 0.24, 0.97);
	}
}
