// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import static wainscribe.model.ProfileUse.BATTEN;
import static wainscribe.model.ProfileUse.CAP;
import static wainscribe.model.ProfileUse.CASING;
import static wainscribe.model.ProfileUse.FRAME;
import static wainscribe.model.ProfileUse.SHELF_EDGE;

import java.util.List;
import java.util.Set;

import wainscribe.model.length.Length;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionPath;
import wainscribe.profile.section.SectionPoint;

/** Strips worked flat: bevels, steps, reeds, flutes and hollows. */
final class FlatMouldings {

	private FlatMouldings() {
	}

	static List<ProfileShape> all() {
		return List.of( //
				new DrawnShape("bevel", Messages.FlatMouldings_Bevel, Set.of(FRAME, CASING, BATTEN), ShapeSize.ofMillimetres(40, 14), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_LowEdgeOfTheThickness, 10, 40, 90), FlatMouldings::bevel),
				new DrawnShape("ridge", Messages.FlatMouldings_Ridge, Set.of(FRAME, BATTEN), ShapeSize.ofMillimetres(36, 12), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_EdgesOfTheThickness, 10, 40, 90), FlatMouldings::ridge),
				new DrawnShape("chamfered-strip", Messages.FlatMouldings_ChamferedStrip, Set.of(FRAME, BATTEN, SHELF_EDGE), ShapeSize.ofMillimetres(45, 12), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_ChamfersOfTheThickness, 5, 30, 90), FlatMouldings::chamferedStrip),
				new DrawnShape("eased-strip", Messages.FlatMouldings_EasedStrip, Set.of(FRAME, BATTEN, SHELF_EDGE, CASING), ShapeSize.ofMillimetres(45, 12), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_RoundsOfTheThickness, 5, 25, 90), FlatMouldings::easedStrip),
				new DrawnShape("stepped", Messages.FlatMouldings_Stepped, Set.of(FRAME, BATTEN), ShapeSize.ofMillimetres(42, 15), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_Steps, 2, 3, 8), FlatMouldings::stepped),
				new DrawnShape("reeds", Messages.FlatMouldings_Reeds, Set.of(FRAME, BATTEN, CASING), ShapeSize.ofMillimetres(36, 12), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_Reeds, 2, 3, 12), FlatMouldings::reeds),
				new DrawnShape("flutes", Messages.FlatMouldings_Flutes, Set.of(FRAME, CASING), ShapeSize.ofMillimetres(60, 15), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_Flutes, 2, 3, 12), FlatMouldings::flutes),
				new DrawnShape("hollow", Messages.FlatMouldings_Hollow, Set.of(FRAME, BATTEN), ShapeSize.ofMillimetres(36, 14), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_DepthOfTheThickness, 10, 40, 80), FlatMouldings::hollow),
				new DrawnShape("two-centre-hollow", Messages.FlatMouldings_TwoCentreHollow, Set.of(FRAME), ShapeSize.ofMillimetres(40, 22), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_UpperPartOfTheWidth, 15, 30, 38), FlatMouldings::twoCentreHollow),
				new DrawnShape("quirk-bead", Messages.FlatMouldings_QuirkBead, Set.of(FRAME, CASING, BATTEN), ShapeSize.ofMillimetres(45, 12), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_BeadOfTheWidth, 10, 25, 45), FlatMouldings::quirkBead),
				new DrawnShape("lip", Messages.FlatMouldings_Lip, Set.of(SHELF_EDGE, CAP), ShapeSize.ofMillimetres(28, 10), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_LapOfTheThickness, 20, 50, 80), FlatMouldings::lip));
	}

	/** A face that slopes straight from the high edge to the low one. */
	private static ProfileSection bevel(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = s.ofThickness(s.number());
		return SectionPath.atOrigin().out(t).line(w, low.minus(t)).out(low.negated()).section();
	}

	/** Two bevels that meet in the middle. */
	private static ProfileSection ridge(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = s.ofThickness(s.number());
		Length half = w.dividedBy(2);
		return SectionPath.atOrigin().out(low).line(half, t.minus(low)).line(w.minus(half), low.minus(t)).out(low.negated()).section();
	}

	/** A strip with both edges taken off at 45 degrees. */
	private static ProfileSection chamferedStrip(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length cut = s.ofThickness(s.number());
		return SectionPath.atOrigin().out(t.minus(cut)).line(cut, cut).along(w.minus(cut.times(2))).line(cut, cut.negated()).out(cut.minus(t)).section();
	}

	/** A strip with both edges rounded. */
	private static ProfileSection easedStrip(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length round = s.ofThickness(s.number());
		return SectionPath.atOrigin().out(t.minus(round)).round(round, round).along(w.minus(round.times(2))).round(round, round.negated())
				.out(round.minus(t)).section();
	}

	/** Flats of equal width, each a step higher than the one below. */
	private static ProfileSection stepped(ShapeSize s) {
		int steps = s.number();
		SectionPath path = SectionPath.atOrigin();
		for (int i = 1; i <= steps; i++) {
			path.out(Proportions.mark(s.thickness(), i, steps).minus(path.pen().y()));
			path.along(Proportions.mark(s.width(), i, steps).minus(path.pen().x()));
		}
		return path.out(s.thickness().negated()).section();
	}

	/** Half rounds side by side. */
	private static ProfileSection reeds(ShapeSize s) {
		int reeds = s.number();
		Length widest = s.width().plus(new Length(reeds - 1L)).dividedBy(reeds);
		Length edge = s.thickness().minus(widest.dividedBy(2));
		SectionPath path = SectionPath.atOrigin().out(edge);
		for (int i = 1; i <= reeds; i++) {
			path.halfRound(Proportions.mark(s.width(), i, reeds).minus(path.pen().x()));
		}
		return path.out(path.pen().y().negated()).section();
	}

	/** Hollows of part of a circle, cut half as deep as wide, between flats half as wide as they. */
	private static ProfileSection flutes(ShapeSize s) {
		int parts = 3 * s.number() + 1;
		Length t = s.thickness();
		SectionPath path = SectionPath.atOrigin().out(t);
		for (int i = 1; i + 2 < parts; i += 3) {
			path.along(Proportions.mark(s.width(), i, parts).minus(path.pen().x()));
			path.flute(Proportions.mark(s.width(), i + 2, parts).minus(path.pen().x()));
		}
		return path.along(s.width().minus(path.pen().x())).out(t.negated()).section();
	}

	/** One shallow hollow between two fillets. */
	private static ProfileSection hollow(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length depth = s.ofThickness(s.number());
		Length fillet = w.dividedBy(6);
		return SectionPath.atOrigin().out(t).along(fillet).arc(w.minus(fillet.times(2)), Length.ZERO, depth.negated()).along(fillet).out(t.negated()).section();
	}

	/** The hollow of a column base: a small quarter above, a larger one below, between fillets of two heights. */
	private static ProfileSection twoCentreHollow(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = t.dividedBy(8);
		Length fillet = w.dividedBy(10);
		Length hollow = w.minus(fillet.times(2));
		Length upper = hollow.times(s.number()).dividedBy(100);
		Length lower = hollow.minus(upper);
		Length middle = low.plus(upper);
		return SectionPath.atOrigin().out(t).along(fillet).hollow(lower, low.minus(t)).hollow(upper, upper).along(fillet).out(middle.negated()).section();
	}

	/** A flat strip with a bead at its upper edge, set off by a quirk. */
	private static ProfileSection quirkBead(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length bead = s.ofWidth(s.number());
		Length quirk = t.dividedBy(6);
		Length floor = t.minus(bead.dividedBy(2));
		return SectionPath.atOrigin().out(t).along(w.minus(bead).minus(quirk)).out(floor.minus(t)).along(quirk).halfRound(bead).out(floor.negated()).section();
	}

	/** An edge strip with rounded front that laps over the edge of a board. */
	private static ProfileSection lip(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length lap = s.ofThickness(s.number());
		Length round = t.minus(lap).dividedBy(2);
		Length rest = w.dividedBy(4);
		return SectionPath.atOrigin().out(t.minus(round)).round(round, round).along(w.minus(round.times(2))).round(round, round.negated())
				.out(round.plus(lap).minus(t)).sectionBehind(List.of(new SectionPoint(w.minus(rest), lap), new SectionPoint(w.minus(rest), Length.ZERO)));
	}
}
