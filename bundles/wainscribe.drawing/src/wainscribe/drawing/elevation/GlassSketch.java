// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.Role;
import wainscribe.drawing.Subject;
import wainscribe.layout.glass.GlassFrame;
import wainscribe.model.outline.Outline;
import wainscribe.profile.ProfileCatalogue;

/** Draws a mirror with the frame of moulding that laps over its glass. */
record GlassSketch(Sheet sheet, ProfileCatalogue catalogue) {

	void draw(GlassFrame frame) {
		Outline outer = Sketches.onWall(frame.outer(), frame.mirror());
		Bounds bounds = new Bounds(outer.x0().approximateMillimetres(), outer.y0().approximateMillimetres(),
				outer.x1().approximateMillimetres(), outer.y1().approximateMillimetres());
		double face = frame.section().face().approximateMillimetres();
		Subject subject = Subject.element(frame.mirror().getId());
		Relief relief = catalogue.find(frame.section().id()).map(Relief::of).orElse(Relief.PLAIN);
		new MouldingSketch(sheet).frame(LayerName.FIXTURE, subject, Quad.of(bounds), face, relief);
		if (frame.leavesSight()) {
			new FurnitureSketch(new Pencil(sheet, LayerName.FIXTURE, subject, bounds.grown(-face)), Role.FIXTURE)
					.draw(frame.mirror().getType());
		}
	}
}
