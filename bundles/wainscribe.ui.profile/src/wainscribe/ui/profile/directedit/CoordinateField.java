// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.directedit;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalViewer;

import wainscribe.profile.section.ArcSegment;
import wainscribe.profile.section.SectionPoint;
import wainscribe.profile.section.SectionEdit;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.actions.SectionSteps;
import wainscribe.ui.profile.desk.Grip;
import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.editparts.NodeEditPart;

/** Lets the coordinates of a node be typed where it lies; of an arc its rise. */
public final class CoordinateField {

	private CoordinateField() {
	}

	/** Opens the fields of a node. */
	public static void open(NodeEditPart node) {
		ProfileDesk desk = node.desk();
		GraphicalViewer viewer = (GraphicalViewer) node.getViewer();
		if (arcOf(desk, node.key()) instanceof ArcSegment arc) {
			int number = segmentOf(node.key());
			DeskField field = new DeskField(viewer, desk, place(node, arc.at(0.5).nearest()));
			field.add(Messages.CoordinateField_Rise, arc.rise());
			field.open(desk, typed -> new SectionSteps(viewer, desk).draw(Messages.SectionSteps_Arc,
					new SectionEdit(desk.session().draft().section()).turnToArc(number, typed.getFirst())));
			return;
		}
		desk.nodes().placeOf(node.key()).ifPresent(now -> {
			DeskField field = new DeskField(viewer, desk, place(node, now));
			field.add(Messages.CoordinateField_Up, now.x());
			field.add(Messages.CoordinateField_Out, now.y());
			field.open(desk, typed -> new SectionSteps(viewer, desk).place(node.key(), new SectionPoint(typed.get(0), typed.get(1))));
		});
	}

	private static Object arcOf(ProfileDesk desk, NodeKey key) {
		boolean bends = key instanceof NodeKey.OfSegment || key instanceof NodeKey.OfHandle(int segment, Grip grip) && grip == Grip.MIDDLE;
		return bends ? desk.nodes().segment(segmentOf(key)).orElse(null) : null;
	}

	private static int segmentOf(NodeKey key) {
		return switch (key) {
			case NodeKey.OfSegment(int segment) -> segment;
			case NodeKey.OfHandle(int segment, Grip grip) -> segment;
			case NodeKey.OfPoint(int point) -> point;
		};
	}

	private static Point place(NodeEditPart node, SectionPoint point) {
		Point pixel = node.desk().plane().pixel(point.spot());
		node.getFigure().translateToAbsolute(pixel);
		return pixel;
	}
}
