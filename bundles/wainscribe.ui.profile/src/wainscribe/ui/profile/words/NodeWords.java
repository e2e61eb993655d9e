// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.words;

import java.util.List;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.section.ArcSegment;
import wainscribe.profile.section.CurveSegment;
import wainscribe.profile.section.SectionPoint;
import wainscribe.profile.section.Segment;
import wainscribe.profile.section.Spot;
import wainscribe.profile.section.StraightSegment;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.profile.desk.SectionNodes;

/** What points, segments and handles are called, and what their numbers say. */
public final class NodeWords {

	private NodeWords() {
	}

	/** Returns what something is called; people count from one. */
	public static String name(SectionNodes nodes, NodeKey key) {
		return switch (key) {
			case NodeKey.OfPoint(int point) -> NLS.bind(Messages.NodeWords_Point, String.valueOf(point + 1));
			case NodeKey.OfSegment(int segment) -> segmentName(nodes, segment);
			case NodeKey.OfHandle(int segment, var grip) -> NLS.bind(switch (grip) {
				case LEAVES -> Messages.NodeWords_FirstHandle;
				case ARRIVES -> Messages.NodeWords_SecondHandle;
				case MIDDLE -> Messages.NodeWords_Middle;
			}, segmentName(nodes, segment));
		};
	}

	private static String segmentName(SectionNodes nodes, int segment) {
		String kind = nodes.segment(segment).map(NodeWords::kind).orElse(Messages.NodeWords_Line);
		return NLS.bind(Messages.NodeWords_Segment, kind, String.valueOf(segment + 1));
	}

	/** Returns what kind of segment it is. */
	public static String kind(Segment segment) {
		return switch (segment) {
			case StraightSegment line -> Messages.NodeWords_Line;
			case ArcSegment arc -> Messages.NodeWords_Arc;
			case CurveSegment curve -> Messages.NodeWords_Curve;
		};
	}

	/** Returns the numbers of something as a sentence. */
	public static String value(SectionNodes nodes, NodeKey key, LengthUnit unit) {
		if (key instanceof NodeKey.OfSegment(int number)) {
			return nodes.segment(number).map(segment -> NLS.bind(nodes.isBack(number) ? Messages.NodeWords_BackValue
					: Messages.NodeWords_FaceValue, measured(segment.lengthMillimetres(), unit))).orElse(""); //$NON-NLS-1$
		}
		return nodes.placeOf(key).map(place -> place(place, unit)).orElse(""); //$NON-NLS-1$
	}

	/** Returns where a point is. */
	public static String place(SectionPoint point, LengthUnit unit) {
		return NLS.bind(Messages.NodeWords_Place, LengthFormat.asShown(point.x(), unit), LengthFormat.asShown(point.y(), unit));
	}

	/** Returns what is said beside the pointer while something is moved. */
	public static List<String> moving(SectionPoint to, SectionPoint from, LengthUnit unit) {
		return List.of(place(to, unit), NLS.bind(Messages.NodeWords_Moved, LengthFormat.asShown(to.x().minus(from.x()), unit),
				LengthFormat.asShown(to.y().minus(from.y()), unit)));
	}

	/** Returns a measured length to the nearest 1/64 in or 0.1 mm. */
	public static String measured(double millimetres, LengthUnit unit) {
		Length finest = unit == LengthUnit.INCH ? new Length(Length.UNITS_PER_SIXTY_FOURTH)
				: new Length(Length.UNITS_PER_MILLIMETRE / 10);
		return LengthFormat.asShown(Spot.nearest(millimetres).roundedTo(finest), unit);
	}
}
