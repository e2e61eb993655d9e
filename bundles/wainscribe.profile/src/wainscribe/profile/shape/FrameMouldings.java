// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import static wainscribe.model.ProfileUse.BATTEN;
import static wainscribe.model.ProfileUse.CAP;
import static wainscribe.model.ProfileUse.FRAME;
import static wainscribe.model.ProfileUse.SHELF_EDGE;

import java.util.List;
import java.util.Set;

import wainscribe.model.length.Length;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionPath;
import wainscribe.profile.section.SectionPoint;

/** Rounds and hollows between fillets, as they frame panels and cover joints. */
final class FrameMouldings {

	private FrameMouldings() {
	}

	static List<ProfileShape> all() {
		return List.of( //
				new DrawnShape("fillet", Messages.FrameMouldings_Fillet, Set.of(FRAME, BATTEN), ShapeSize.ofMillimetres(30, 9), //$NON-NLS-1$
						null, FrameMouldings::fillet),
				new DrawnShape("bead", Messages.FrameMouldings_Bead, Set.of(FRAME, BATTEN, SHELF_EDGE), ShapeSize.ofMillimetres(18, 9), //$NON-NLS-1$
						null, FrameMouldings::bead),
				new DrawnShape("flat-bead", Messages.FrameMouldings_FlatBead, Set.of(FRAME, BATTEN), ShapeSize.ofMillimetres(24, 8), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_EdgesOfTheThickness, 5, 25, 90), FrameMouldings::flatBead),
				new DrawnShape("astragal", Messages.FrameMouldings_Astragal, Set.of(FRAME, BATTEN), ShapeSize.ofMillimetres(24, 13), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_FilletsOfTheWidth, 5, 16, 40), FrameMouldings::astragal),
				new DrawnShape("torus", Messages.FrameMouldings_Torus, Set.of(FRAME, BATTEN), ShapeSize.ofMillimetres(30, 15), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_FilletOfTheWidth, 5, 20, 50), FrameMouldings::torus),
				new DrawnShape("ovolo", Messages.FrameMouldings_Ovolo, Set.of(FRAME), ShapeSize.ofMillimetres(28, 14), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_LowEdgeOfTheThickness, 5, 25, 75), FrameMouldings::ovolo),
				new DrawnShape("cove", Messages.FrameMouldings_Cove, Set.of(FRAME), ShapeSize.ofMillimetres(25, 12), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_LowEdgeOfTheThickness, 5, 25, 75), FrameMouldings::cove),
				new DrawnShape("cavetto", Messages.FrameMouldings_Cavetto, Set.of(FRAME, CAP), ShapeSize.ofMillimetres(28, 18), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_UpperFilletOfTheWidth, 5, 20, 60), FrameMouldings::cavetto),
				new DrawnShape("echinus", Messages.FrameMouldings_Echinus, Set.of(FRAME, CAP), ShapeSize.ofMillimetres(32, 20), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_UpperFilletOfTheWidth, 5, 20, 60), FrameMouldings::echinus),
				new DrawnShape("thumb", Messages.FrameMouldings_Thumb, Set.of(FRAME, SHELF_EDGE), ShapeSize.ofMillimetres(28, 12), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_LowEdgeOfTheThickness, 5, 25, 75), FrameMouldings::thumb),
				new DrawnShape("ogee", Messages.FrameMouldings_Ogee, Set.of(FRAME, SHELF_EDGE), ShapeSize.ofMillimetres(32, 13), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_FilletsOfTheWidth, 2, 12, 40), FrameMouldings::ogee),
				new DrawnShape("cyma-recta", Messages.FrameMouldings_CymaRecta, Set.of(FRAME, CAP), ShapeSize.ofMillimetres(36, 20), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_FilletsOfTheWidth, 2, 12, 40), FrameMouldings::cymaRecta),
				new DrawnShape("cyma-reversa", Messages.FrameMouldings_CymaReversa, Set.of(FRAME, CAP), ShapeSize.ofMillimetres(36, 20), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_FilletsOfTheWidth, 2, 12, 40), FrameMouldings::cymaReversa),
				new DrawnShape("bead-and-cove", Messages.FrameMouldings_BeadAndCove, Set.of(FRAME), ShapeSize.ofMillimetres(38, 18), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_BeadOfTheWidth, 15, 33, 50), FrameMouldings::beadAndCove),
				new DrawnShape("bolection", Messages.FrameMouldings_Bolection, Set.of(FRAME), ShapeSize.ofMillimetres(44, 22), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_LapOfTheThickness, 20, 45, 70), FrameMouldings::bolection));
	}

	/** A plain strip. */
	private static ProfileSection fillet(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		return SectionPath.atOrigin().out(t).along(w).out(t.negated()).section();
	}

	/** A half round on low edges; with the thickness half the width there are none. */
	private static ProfileSection bead(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length edge = t.minus(w.dividedBy(2));
		return SectionPath.atOrigin().out(edge).halfRound(w).out(edge.negated()).section();
	}

	/** A round of less than half a circle on edges. */
	private static ProfileSection flatBead(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length edge = s.ofThickness(s.number());
		return SectionPath.atOrigin().out(edge).arc(w, Length.ZERO, t.minus(edge)).out(edge.negated()).section();
	}

	/** A half round between two fillets. */
	private static ProfileSection astragal(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length fillet = s.ofWidth(s.number());
		Length round = w.minus(fillet.times(2));
		Length edge = t.minus(round.dividedBy(2));
		return SectionPath.atOrigin().out(edge).along(fillet).halfRound(round).along(fillet).out(edge.negated()).section();
	}

	/** A half round above a fillet. */
	private static ProfileSection torus(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length fillet = s.ofWidth(s.number());
		Length round = w.minus(fillet);
		Length edge = t.minus(round.dividedBy(2));
		return SectionPath.atOrigin().out(edge).along(fillet).halfRound(round).out(edge.negated()).section();
	}

	/** A quarter round that falls from the high edge to the low one, between two fillets. */
	private static ProfileSection ovolo(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = s.ofThickness(s.number());
		Length drop = t.minus(low);
		Length fillet = w.minus(drop).dividedBy(2);
		return SectionPath.atOrigin().out(t).along(fillet).round(drop, drop.negated()).along(w.minus(fillet).minus(drop)).out(low.negated()).section();
	}

	/** A quarter hollow that falls from the high edge to the low one, between two fillets. */
	private static ProfileSection cove(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = s.ofThickness(s.number());
		Length drop = t.minus(low);
		Length fillet = w.minus(drop).dividedBy(2);
		return SectionPath.atOrigin().out(t).along(fillet).hollow(drop, drop.negated()).along(w.minus(fillet).minus(drop)).out(low.negated()).section();
	}

	/** A quarter hollow that climbs from the low edge to a projecting fillet. */
	private static ProfileSection cavetto(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length fillet = s.ofWidth(s.number());
		Length low = t.dividedBy(5);
		return SectionPath.atOrigin().out(low).hollow(w.minus(fillet), t.minus(low)).along(fillet).out(t.negated()).section();
	}

	/** A flattened round that climbs steeply to a projecting fillet; a curve, not struck from one centre. */
	private static ProfileSection echinus(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length fillet = s.ofWidth(s.number());
		Length low = t.dividedBy(5);
		Length dx = w.minus(fillet);
		Length dy = t.minus(low);
		SectionPoint first = new SectionPoint(dx.dividedBy(6), dy.times(3).dividedBy(5));
		SectionPoint second = new SectionPoint(dx.times(3).dividedBy(5), dy);
		return SectionPath.atOrigin().out(low).curve(first, second, new SectionPoint(dx, dy)).along(fillet).out(t.negated()).section();
	}

	/** A quarter of an ellipse, wider than deep, that falls from a quirk to the low edge. */
	private static ProfileSection thumb(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = s.ofThickness(s.number());
		Length fillet = w.dividedBy(8);
		Length quirk = t.minus(low).dividedBy(6);
		Length dx = w.minus(fillet);
		Length dy = t.minus(low).minus(quirk);
		SectionPoint first = new SectionPoint(Proportions.quarter(dx), Length.ZERO);
		SectionPoint second = new SectionPoint(dx, Proportions.quarter(dy).minus(dy));
		return SectionPath.atOrigin().out(t).along(fillet).out(quirk.negated()).curve(first, second, new SectionPoint(dx, dy.negated()))
				.out(low.negated()).section();
	}

	/** An ogee that falls from the high edge to the low one, round first. */
	private static ProfileSection ogee(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = t.dividedBy(4);
		Length fillet = s.ofWidth(s.number());
		return SectionPath.atOrigin().out(t).along(fillet).ogee(w.minus(fillet.times(2)), low.minus(t)).along(fillet).out(low.negated()).section();
	}

	/** An ogee that climbs, round below and hollow above. */
	private static ProfileSection cymaRecta(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = t.dividedBy(5);
		Length fillet = s.ofWidth(s.number());
		return SectionPath.atOrigin().out(low).along(fillet).reversedOgee(w.minus(fillet.times(2)), t.minus(low)).along(fillet).out(t.negated()).section();
	}

	/** An ogee that climbs, hollow below and round above. */
	private static ProfileSection cymaReversa(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = t.dividedBy(5);
		Length fillet = s.ofWidth(s.number());
		return SectionPath.atOrigin().out(low).along(fillet).ogee(w.minus(fillet.times(2)), t.minus(low)).along(fillet).out(t.negated()).section();
	}

	/** A bead on the high edge, a quirk, a hollow and a fillet. */
	private static ProfileSection beadAndCove(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length bead = s.ofWidth(s.number());
		Length shoulder = t.minus(bead.dividedBy(2));
		Length quirk = t.dividedBy(10);
		Length low = t.dividedBy(5);
		Length fillet = w.dividedBy(6);
		return SectionPath.atOrigin().out(shoulder).halfRound(bead).out(quirk.negated())
				.hollow(w.minus(bead).minus(fillet), low.plus(quirk).minus(shoulder)).along(fillet).out(low.negated()).section();
	}

	/** A moulding that laps over the edge of what it frames: ogee outside, round inside, a rebate behind. */
	private static ProfileSection bolection(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length lap = s.ofThickness(s.number());
		Length rest = w.dividedBy(3);
		Length round = t.minus(lap).dividedBy(2);
		Length low = t.dividedBy(5);
		return SectionPath.atOrigin().out(low).ogee(w.dividedBy(2), t.minus(low)).along(w.minus(w.dividedBy(2)).minus(round)).round(round, round.negated())
				.out(lap.plus(round).minus(t))
				.sectionBehind(List.of(new SectionPoint(w.minus(rest), lap), new SectionPoint(w.minus(rest), Length.ZERO)));
	}
}
