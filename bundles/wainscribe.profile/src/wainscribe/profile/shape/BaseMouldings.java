// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import static wainscribe.model.ProfileUse.BASE;
import static wainscribe.model.ProfileUse.BATTEN;

import java.util.List;
import java.util.Set;

import wainscribe.model.length.Length;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionPath;
import wainscribe.profile.section.SectionPoint;

/** Bases and plinths; their lower edge stands on the floor and is part of the back. */
final class BaseMouldings {

	private BaseMouldings() {
	}

	static List<ProfileShape> all() {
		return List.of( //
				new DrawnShape("square-base", Messages.BaseMouldings_SquareBase, Set.of(BASE), ShapeSize.ofMillimetres(100, 15), //$NON-NLS-1$
						null, BaseMouldings::squareBase),
				new DrawnShape("eased-base", Messages.BaseMouldings_EasedBase, Set.of(BASE), ShapeSize.ofMillimetres(100, 15), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_RoundOfTheThickness, 5, 25, 95), BaseMouldings::easedBase),
				new DrawnShape("chamfered-base", Messages.BaseMouldings_ChamferedBase, Set.of(BASE), ShapeSize.ofMillimetres(120, 18), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_ChamferOfTheThickness, 10, 60, 95), BaseMouldings::chamferedBase),
				new DrawnShape("ogee-base", Messages.BaseMouldings_OgeeBase, Set.of(BASE), ShapeSize.ofMillimetres(120, 15), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_UpperEdgeOfTheThickness, 15, 40, 70), BaseMouldings::ogeeBase),
				new DrawnShape("torus-base", Messages.BaseMouldings_TorusBase, Set.of(BASE), ShapeSize.ofMillimetres(145, 18), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_RoundOfTheThickness, 20, 50, 95), BaseMouldings::torusBase),
				new DrawnShape("ovolo-base", Messages.BaseMouldings_OvoloBase, Set.of(BASE), ShapeSize.ofMillimetres(110, 16), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_UpperEdgeOfTheThickness, 15, 35, 70), BaseMouldings::ovoloBase),
				new DrawnShape("cove-base", Messages.BaseMouldings_CoveBase, Set.of(BASE), ShapeSize.ofMillimetres(110, 16), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_UpperEdgeOfTheThickness, 15, 35, 70), BaseMouldings::coveBase),
				new DrawnShape("stepped-base", Messages.BaseMouldings_SteppedBase, Set.of(BASE), ShapeSize.ofMillimetres(140, 20), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_UpperBoardOfTheThickness, 30, 60, 90), BaseMouldings::steppedBase),
				new DrawnShape("plinth", Messages.BaseMouldings_Plinth, Set.of(BASE), ShapeSize.ofMillimetres(150, 24), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_UpperEdgeOfTheThickness, 20, 50, 80), BaseMouldings::plinth),
				new DrawnShape("quarter-round", Messages.BaseMouldings_QuarterRound, Set.of(BASE, BATTEN), ShapeSize.ofMillimetres(18, 18), //$NON-NLS-1$
						null, BaseMouldings::quarterRound));
	}

	/** A plain board. */
	private static ProfileSection squareBase(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		return SectionPath.offTheWall(t).along(w).out(t.negated()).sectionBehind(Proportions.FLOOR);
	}

	/** A plain board with its upper edge rounded. */
	private static ProfileSection easedBase(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length round = s.ofThickness(s.number());
		return SectionPath.offTheWall(t).along(w.minus(round)).round(round, round.negated()).out(round.minus(t)).sectionBehind(Proportions.FLOOR);
	}

	/** A board whose upper edge is taken off at 45 degrees. */
	private static ProfileSection chamferedBase(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length cut = s.ofThickness(s.number());
		return SectionPath.offTheWall(t).along(w.minus(cut)).line(cut, cut.negated()).out(cut.minus(t)).sectionBehind(Proportions.FLOOR);
	}

	/** A board with an ogee and a fillet at the top. */
	private static ProfileSection ogeeBase(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = s.ofThickness(s.number());
		Length curve = s.ofThickness(120);
		Length fillet = t.dividedBy(4);
		return SectionPath.offTheWall(t).along(w.minus(curve).minus(fillet)).ogee(curve, low.minus(t)).along(fillet).out(low.negated())
				.sectionBehind(Proportions.FLOOR);
	}

	/** A board with a quarter round at the top. */
	private static ProfileSection torusBase(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length round = s.ofThickness(s.number());
		return SectionPath.offTheWall(t).along(w.minus(round)).round(round, round.negated()).out(round.minus(t)).sectionBehind(Proportions.FLOOR);
	}

	/** A board with a quirk and a quarter round at the top. */
	private static ProfileSection ovoloBase(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = s.ofThickness(s.number());
		Length quirk = t.dividedBy(8);
		Length drop = t.minus(low).minus(quirk);
		return SectionPath.offTheWall(t).along(w.minus(drop)).out(quirk.negated()).round(drop, drop.negated()).out(low.negated())
				.sectionBehind(Proportions.FLOOR);
	}

	/** A board with a quarter hollow at the top. */
	private static ProfileSection coveBase(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = s.ofThickness(s.number());
		Length drop = t.minus(low);
		return SectionPath.offTheWall(t).along(w.minus(drop)).hollow(drop, drop.negated()).out(low.negated()).sectionBehind(Proportions.FLOOR);
	}

	/** A high board before a thinner one, as two boards would be. */
	private static ProfileSection steppedBase(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length upper = s.ofThickness(s.number());
		Length step = w.dividedBy(3);
		return SectionPath.offTheWall(t).along(w.minus(step)).out(upper.minus(t)).along(step).out(upper.negated()).sectionBehind(Proportions.FLOOR);
	}

	/** A heavy foot with a weathered, straight slope at the top. */
	private static ProfileSection plinth(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = s.ofThickness(s.number());
		Length slope = t.minus(low).times(2);
		return SectionPath.offTheWall(t).along(w.minus(slope)).line(slope, low.minus(t)).out(low.negated()).sectionBehind(Proportions.FLOOR);
	}

	/** A quarter of a circle in the angle of wall and floor; with two measures a quarter of an oval. */
	private static ProfileSection quarterRound(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		SectionPoint first = new SectionPoint(Proportions.quarter(w), Length.ZERO);
		SectionPoint second = new SectionPoint(w, Proportions.quarter(t).minus(t));
		SectionPath path = SectionPath.offTheWall(t);
		SectionPath drawn = w.equals(t) ? path.round(w, t.negated()) : path.curve(first, second, new SectionPoint(w, t.negated()));
		return drawn.sectionBehind(Proportions.FLOOR);
	}
}
