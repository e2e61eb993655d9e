// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import wainscribe.drawing.Role;
import wainscribe.model.FixtureType;

/** Outlines of small things on the wall. */
record AccessorySketch(Pencil pencil, Role body) {

	private static final double ROUND = 500;

	void draw(FixtureType type) {
		switch (type) {
			case TOWEL_BAR -> bar(0.3, 0.7);
			case GRAB_BAR -> bar(0.2, 0.8);
			case HANDRAIL -> handrail();
			case TOWEL_RING -> ring();
			case ROBE_HOOK -> hook();
			case TP_HOLDER -> paperHolder();
			case SCONCE -> sconce();
			case THERMOSTAT -> thermostat();
			default -> keypad();
		}
	}

	private void bar(double low, double high) {
		double post = Math.min(0.2, pencil.area().height() / pencil.area().width());
		pencil.rounded(body, 0, low, 1, high, ROUND);
		pencil.box(Role.FIXTURE_METAL, 0, 0, post, 1);
		pencil.box(Role.FIXTURE_METAL, 1 - post, 0, 1, 1);
	}

	private void handrail() {
		pencil.rounded(body, 0, 0.35, 1, 1, ROUND);
		for (double bracket : new double[] { 0.1, 0.5, 0.9 }) {
			pencil.polygon(Role.FIXTURE_METAL, bracket - 0.008, 0, bracket + 0.008, 0, bracket + 0.012, 0.35,
					bracket - 0.012, 0.35);
		}
	}

	private void ring() {
		pencil.circle(body, 0.5, 0.44, 0.42);
		pencil.circle(Role.FIXTURE_LINE, 0.5, 0.44, 0.34);
		pencil.box(Role.FIXTURE_METAL, 0.4, 0.82, 0.6, 1);
	}

	private void hook() {
		pencil.rounded(body, 0.1, 0.3, 0.9, 1, ROUND);
		pencil.rounded(Role.FIXTURE_METAL, 0.36, 0.1, 0.64, 0.7, ROUND);
		pencil.rounded(Role.FIXTURE_METAL, 0.25, 0, 0.75, 0.25, ROUND);
	}

	private void paperHolder() {
		pencil.whole(Role.FIXTURE_METAL);
		pencil.rounded(body, 0.1, 0.08, 0.9, 0.92, ROUND);
		pencil.circle(Role.FIXTURE_LINE, 0.5, 0.5, 0.12);
	}

	private void sconce() {
		pencil.polygon(body, 0.12, 1, 0.88, 1, 1, 0.35, 0, 0.35);
		pencil.box(Role.FIXTURE_METAL, 0.42, 0.12, 0.58, 0.35);
		pencil.box(Role.FIXTURE_METAL, 0.28, 0, 0.72, 0.14);
	}

	private void thermostat() {
		pencil.rounded(body, 0, 0, 1, 1, 8);
		pencil.circle(Role.FIXTURE_LINE, 0.5, 0.5, 0.3);
		pencil.line(Role.FIXTURE_LINE, 0.5, 0.5, 0.66, 0.68);
	}

	private void keypad() {
		pencil.rounded(body, 0, 0, 1, 1, 8);
		pencil.box(Role.FIXTURE_LINE, 0.15, 0.68, 0.85, 0.88);
		for (double y : new double[] { 0.2, 0.38, 0.56 }) {
			for (double x : new double[] { 0.25, 0.5, 0.75 }) {
				pencil.circle(Role.FIXTURE_LINE, x, y, 0.05);
			}
		}
	}
}
