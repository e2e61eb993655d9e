// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import static wainscribe.model.ProfileUse.CROWN;

import java.util.List;
import java.util.Set;

import wainscribe.model.length.Length;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionPath;
import wainscribe.profile.section.SectionPoint;

/** Crowns; their upper edge meets the ceiling and is part of the back. */
final class CrownMouldings {

	private CrownMouldings() {
	}

	static List<ProfileShape> all() {
		return List.of( //
				new DrawnShape("scotia", Messages.CrownMouldings_Scotia, Set.of(CROWN), ShapeSize.ofMillimetres(20, 20), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_EdgesOfTheThickness, 3, 12, 40), CrownMouldings::scotia),
				new DrawnShape("cove-crown", Messages.CrownMouldings_CoveCrown, Set.of(CROWN), ShapeSize.ofMillimetres(70, 70), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_EdgesOfTheThickness, 3, 12, 30), CrownMouldings::coveCrown),
				new DrawnShape("ogee-crown", Messages.CrownMouldings_OgeeCrown, Set.of(CROWN), ShapeSize.ofMillimetres(80, 62), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_FilletsOfTheWidth, 3, 8, 25), CrownMouldings::ogeeCrown),
				new DrawnShape("cyma-crown", Messages.CrownMouldings_CymaCrown, Set.of(CROWN), ShapeSize.ofMillimetres(80, 62), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_FilletsOfTheWidth, 3, 8, 25), CrownMouldings::cymaCrown),
				new DrawnShape("bed-mould", Messages.CrownMouldings_BedMould, Set.of(CROWN), ShapeSize.ofMillimetres(45, 40), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_FilletsOfTheWidth, 3, 10, 25), CrownMouldings::bedMould),
				new DrawnShape("bevel-crown", Messages.CrownMouldings_BevelCrown, Set.of(CROWN), ShapeSize.ofMillimetres(50, 50), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_EdgesOfTheThickness, 5, 15, 40), CrownMouldings::bevelCrown));
	}

	/** A solid hollow in the angle of wall and ceiling. */
	private static ProfileSection scotia(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length edge = s.ofThickness(s.number());
		return SectionPath.atOrigin().out(edge).hollow(w.minus(edge), t.minus(edge)).along(edge).sectionBehind(Proportions.ceiling(w));
	}

	/** A hollow between wall and ceiling; hollow behind. */
	private static ProfileSection coveCrown(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length edge = s.ofThickness(s.number());
		return SectionPath.atOrigin().out(edge).hollow(w.minus(edge), t.minus(edge)).along(edge)
				.sectionBehind(List.of(new SectionPoint(w, t.times(4).dividedBy(5)), new SectionPoint(w.minus(edge), t.dividedBy(2)),
						new SectionPoint(w.dividedBy(2), edge.dividedBy(2)), new SectionPoint(w.dividedBy(5), Length.ZERO)));
	}

	/** A sprung crown: fillet, ogee, fillet; hollow behind. */
	private static ProfileSection ogeeCrown(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length edge = t.dividedBy(8);
		Length fillet = s.ofWidth(s.number());
		return SectionPath.atOrigin().out(edge).along(fillet).ogee(w.minus(fillet.times(2)), t.minus(edge)).along(fillet)
				.sectionBehind(Proportions.sprung(w, t));
	}

	/** A sprung crown: fillet, round below and hollow above, fillet; hollow behind. */
	private static ProfileSection cymaCrown(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length edge = t.dividedBy(8);
		Length fillet = s.ofWidth(s.number());
		return SectionPath.atOrigin().out(edge).along(fillet).reversedOgee(w.minus(fillet.times(2)), t.minus(edge)).along(fillet)
				.sectionBehind(Proportions.sprung(w, t));
	}

	/** A sprung quarter round between fillets, under a shelf or a ceiling; hollow behind. */
	private static ProfileSection bedMould(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length edge = t.dividedBy(6);
		Length fillet = s.ofWidth(s.number());
		return SectionPath.atOrigin().out(edge).along(fillet).round(w.minus(fillet.times(2)), t.minus(edge)).along(fillet)
				.sectionBehind(Proportions.sprung(w, t));
	}

	/** A plain slope between wall and ceiling. */
	private static ProfileSection bevelCrown(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length edge = s.ofThickness(s.number());
		return SectionPath.atOrigin().out(edge).line(w.minus(edge), t.minus(edge)).along(edge).sectionBehind(Proportions.ceiling(w));
	}
}
