// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import static wainscribe.model.ProfileUse.CAP;
import static wainscribe.model.ProfileUse.RAIL;
import static wainscribe.model.ProfileUse.SHELF_EDGE;

import java.util.List;
import java.util.Set;

import wainscribe.model.length.Length;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionPath;
import wainscribe.profile.section.SectionPoint;

/** Rails and caps. */
final class RailMouldings {

	private RailMouldings() {
	}

	static List<ProfileShape> all() {
		return List.of( //
				new DrawnShape("ogee-rail", Messages.RailMouldings_OgeeRail, Set.of(RAIL), ShapeSize.ofMillimetres(64, 20), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_EachOgeeOfTheWidth, 15, 30, 40), RailMouldings::ogeeRail),
				new DrawnShape("bead-rail", Messages.RailMouldings_BeadRail, Set.of(RAIL), ShapeSize.ofMillimetres(58, 24), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_NoseOfTheWidth, 20, 40, 60), RailMouldings::beadRail),
				new DrawnShape("ovolo-rail", Messages.RailMouldings_OvoloRail, Set.of(RAIL), ShapeSize.ofMillimetres(60, 22), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_NoseOfTheWidth, 20, 40, 70), RailMouldings::ovoloRail),
				new DrawnShape("picture-rail", Messages.RailMouldings_PictureRail, Set.of(RAIL), ShapeSize.ofMillimetres(50, 20), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_HollowOfTheWidth, 10, 24, 40), RailMouldings::pictureRail),
				new DrawnShape("cap", Messages.RailMouldings_Cap, Set.of(RAIL, CAP), ShapeSize.ofMillimetres(44, 30), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_RoundsOfTheNoseOfTheThickness, 5, 20, 35), RailMouldings::cap),
				new DrawnShape("nosed-cap", Messages.RailMouldings_NosedCap, Set.of(CAP, SHELF_EDGE), ShapeSize.ofMillimetres(22, 36), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_HollowBelowOfTheThickness, 10, 25, 50), RailMouldings::nosedCap),
				new DrawnShape("rebated-cap", Messages.RailMouldings_RebatedCap, Set.of(CAP), ShapeSize.ofMillimetres(30, 28), //$NON-NLS-1$
						new ShapeParameter(Messages.Parameter_LapOverTheBoardOfTheThickness, 20, 45, 70), RailMouldings::rebatedCap));
	}

	/** Alike above and below: ogee, quirk, flat nose, quirk, ogee. */
	private static ProfileSection ogeeRail(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = t.dividedBy(4);
		Length quirk = t.dividedBy(8);
		Length side = s.ofWidth(s.number());
		Length climb = t.minus(low).minus(quirk);
		return SectionPath.atOrigin().out(low).ogee(side, climb).out(quirk).along(w.minus(side.times(2))).out(quirk.negated())
				.ogee(side, climb.negated()).out(low.negated()).section();
	}

	/** Alike above and below: hollow, quirk, half-round nose, quirk, hollow. */
	private static ProfileSection beadRail(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length nose = s.ofWidth(s.number());
		Length low = t.dividedBy(5);
		Length quirk = t.dividedBy(12);
		Length side = w.minus(nose).dividedBy(2);
		Length climb = t.minus(nose.dividedBy(2)).minus(low).minus(quirk);
		return SectionPath.atOrigin().out(low).hollow(side, climb).out(quirk).halfRound(nose).out(quirk.negated())
				.hollow(w.minus(nose).minus(side), climb.negated()).out(low.negated()).section();
	}

	/** A flat nose between two quarter rounds. */
	private static ProfileSection ovoloRail(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length nose = s.ofWidth(s.number());
		Length low = t.dividedBy(4);
		Length side = w.minus(nose).dividedBy(2);
		return SectionPath.atOrigin().out(low).round(side, t.minus(low)).along(nose)
				.round(w.minus(nose).minus(side), low.minus(t)).out(low.negated()).section();
	}

	/** An ogee below, a round nose and above it a hollow that takes the hooks. */
	private static ProfileSection pictureRail(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length groove = s.ofWidth(s.number());
		Length low = t.dividedBy(4);
		Length nose = w.dividedBy(5);
		Length shoulder = t.minus(nose.dividedBy(2));
		return SectionPath.atOrigin().out(low).ogee(w.minus(groove).minus(nose), shoulder.minus(low)).halfRound(nose)
				.arc(groove, shoulder.dividedBy(4).negated(), groove.dividedBy(3).negated())
				.out(shoulder.dividedBy(4).minus(shoulder)).section();
	}

	/** An ogee below, a quirk, and a nose rounded at both edges with a level top. */
	private static ProfileSection cap(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length low = t.dividedBy(6);
		Length round = s.ofThickness(s.number());
		Length side = w.dividedBy(2);
		Length climb = t.dividedBy(2);
		Length quirk = t.minus(low).minus(climb).minus(round);
		return SectionPath.atOrigin().out(low).ogee(side, climb).out(quirk).round(round, round)
				.along(w.minus(side).minus(round.times(2))).round(round, round.negated()).out(round.minus(t)).section();
	}

	/** A half-round nose on a level board, with a small hollow beneath. */
	private static ProfileSection nosedCap(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length hollow = s.ofThickness(s.number());
		Length board = w.times(3).dividedBy(5);
		Length below = w.minus(board);
		Length flat = t.minus(board.dividedBy(2));
		return SectionPath.atOrigin().out(hollow.dividedBy(3)).hollow(below, hollow.minus(hollow.dividedBy(3))).out(flat.minus(hollow)).halfRound(board)
				.out(flat.negated()).section();
	}

	/** A cap with rounded nose whose rebate sits on the edge of boarding. */
	private static ProfileSection rebatedCap(ShapeSize s) {
		Length w = s.width();
		Length t = s.thickness();
		Length lap = s.ofThickness(s.number());
		Length rest = w.dividedBy(3);
		Length round = t.minus(lap).dividedBy(3);
		SectionPath path = SectionPath.offTheWall(lap).out(t.minus(lap).minus(round)).round(round, round);
		return path.along(w.minus(round.times(2))).round(round, round.negated()).out(round.minus(t))
				.sectionBehind(List.of(new SectionPoint(rest, Length.ZERO), new SectionPoint(rest, lap)));
	}
}
