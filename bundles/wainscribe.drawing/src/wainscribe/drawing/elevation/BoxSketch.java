// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.Role;
import wainscribe.drawing.Subject;
import wainscribe.model.Box;
import wainscribe.model.BoxType;

/** Draws the plates of electrical boxes. */
final class BoxSketch {

	private static final double GANG_PITCH = 60;
	private static final double CORNER = 4;

	private final Sheet sheet;

	BoxSketch(Sheet sheet) {
		this.sheet = sheet;
	}

	void draw(Box box) {
		Bounds plate = Sketches.bounds(box);
		if (plate.width() <= 0 || plate.height() <= 0) {
			return;
		}
		Pencil pencil = new Pencil(sheet, LayerName.BOX, Subject.element(box.getId()), plate);
		pencil.rounded(Role.PLATE, 0, 0, 1, 1, CORNER);
		int gangs = box.getGang() == null ? Math.max(1, (int) Math.round((plate.width() - 15) / GANG_PITCH)) : box.getGang();
		int shown = Math.max(1, Math.min(gangs, 8));
		for (int gang = 0; gang < shown; gang++) {
			gang(pencil, box.getType(), (gang + 0.5) / shown, 0.5 / shown);
		}
	}

	private static void gang(Pencil pencil, BoxType type, double middle, double half) {
		switch (type) {
			case RECEPTACLE -> {
				socket(pencil, middle, half, 0.3);
				socket(pencil, middle, half, 0.7);
			}
			case SWITCH -> {
				pencil.box(Role.PLATE_LINE, middle - half * 0.4, 0.28, middle + half * 0.4, 0.72);
				pencil.line(Role.PLATE_LINE, middle - half * 0.4, 0.5, middle + half * 0.4, 0.5);
			}
			case DATA -> pencil.polygon(Role.PLATE_LINE, middle - half * 0.35, 0.42, middle + half * 0.35, 0.42,
					middle + half * 0.35, 0.56, middle, 0.62, middle - half * 0.35, 0.56);
			case PANEL -> {
				pencil.box(Role.PLATE_LINE, middle - half * 0.8, 0.08, middle + half * 0.8, 0.92);
				pencil.line(Role.PLATE_LINE, middle + half * 0.6, 0.45, middle + half * 0.6, 0.55);
			}
			case JUNCTION, UNRECORDED -> pencil.circle(Role.PLATE_LINE, middle, 0.5, 0.08);
		}
	}

	private static void socket(Pencil pencil, double middle, double half, double height) {
		pencil.line(Role.PLATE_LINE, middle - half * 0.25, height - 0.06, middle - half * 0.25, height + 0.06);
		pencil.line(Role.PLATE_LINE, middle + half * 0.25, height - 0.06, middle + half * 0.25, height + 0.06);
	}
}
