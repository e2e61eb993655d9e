// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import static wainscribe.model.ProfileUse.CASING;

import java.util.List;
import java.util.Set;

import wainscribe.model.length.Length;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionPath;
import wainscribe.profile.section.SectionPoint;

/** Casings; their lower edge is the one away from the opening. */
final class CasingMouldings {

	private CasingMouldings() {
	}

	static List<ProfileShape> all() {
		return List.of( //
				new DrawnShape("ogee-casing", Messages.CasingMouldings_OgeeCasing, Set.of(CASING), ShapeSize.ofMillimetres(70, 20), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_FieldOfTheThickness, 30, 60, 85), CasingMouldings::ogeeCasing),
				new DrawnShape("bead-casing", Messages.CasingMouldings_BeadCasing, Set.of(CASING), ShapeSize.ofMillimetres(64, 18), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_BeadOfTheThickness, 20, 60, 90), CasingMouldings::beadCasing),
				new DrawnShape("back-band", Messages.CasingMouldings_BackBand, Set.of(CASING), ShapeSize.ofMillimetres(30, 28), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_LapOfTheThickness, 30, 60, 85), CasingMouldings::backBand),
				new DrawnShape("tapered-casing", Messages.CasingMouldings_TaperedCasing, Set.of(CASING), ShapeSize.ofMillimetres(60, 16), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_InnerEdgeOfTheThickness, 30, 55, 85), CasingMouldings::taperedCasing));
	}

	/** A thick outer edge, ogee, flat field and a rounded inner edge. */
	private static ProfileSection ogeeCasing(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = s.ofThickness(s.number());
		Length round = t.dividedBy(5);
		Length fillet = w.dividedBy(10);
		Length curve = w.dividedBy(4);
		return SectionPath.atOrigin().out(t).along(fillet).ogee(curve, low.minus(t)).along(w.minus(fillet).minus(curve).minus(round))
				.round(round, round.negated()).out(round.minus(low)).section();
	}

	/** A flat casing with a bead at the inner edge behind a quirk. */
	private static ProfileSection beadCasing(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length bead = s.ofThickness(s.number());
		Length quirk = t.dividedBy(8);
		Length low = t.minus(bead.dividedBy(2));
		return SectionPath.atOrigin().out(t).along(w.minus(bead).minus(quirk)).out(low.minus(t)).along(quirk).halfRound(bead).out(low.negated()).section();
	}

	/** A strip that laps around the outer edge of a casing, with a small ogee. */
	private static ProfileSection backBand(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length lap = s.ofThickness(s.number());
		Length foot = w.dividedBy(3);
		Length low = t.minus(lap).dividedBy(4).plus(lap);
		return SectionPath.atOrigin().out(t).along(foot).ogee(w.minus(foot), low.minus(t)).out(lap.minus(low))
				.sectionBehind(List.of(new SectionPoint(foot, lap), new SectionPoint(foot, Length.ZERO)));
	}

	/** A face that slopes to the opening between two small rounds. */
	private static ProfileSection taperedCasing(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = s.ofThickness(s.number());
		Length round = t.dividedBy(6);
		return SectionPath.atOrigin().out(t.minus(round)).round(round, round).line(w.minus(round.times(2)), low.minus(t)).round(round, round.negated())
				.out(round.minus(low)).section();
	}
}
