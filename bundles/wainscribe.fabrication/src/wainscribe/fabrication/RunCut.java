// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.math.BigDecimal;

import wainscribe.fabrication.CornerJoints.Cut;
import wainscribe.layout.MouldingSection;
import wainscribe.model.length.Length;

/**
 * Measures and saw settings of one straight piece of a run.
 * <p>
 * The back of the piece has the length of the wall; its face is shorter at inside and longer at outside corners by the
 * projection times the cotangent of the cut. On a slope the ends are plumb, so the edges are out of step by the face times
 * the tangent of the pitch.
 *
 * @param section moulding; of a crown the face is its drop on the wall
 * @param sprung  whether it is a crown, cut lying flat
 * @param run     length along the wall, level
 * @param rise    how far the wall's line climbs over it
 * @param left    cut at the left end
 * @param right   cut at the right end
 */
record RunCut(MouldingSection section, boolean sprung, Length run, Length rise, Cut left, Cut right) {

	/** Returns the pitch in degrees, above 0 if it climbs to the right. */
	double pitch() {
		return Mitre.pitch(run, rise);
	}

	boolean isSloped() {
		return rise.signum() != 0;
	}

	Lie lie() {
		return sprung || isSloped() ? Lie.FLAT : Lie.ON_EDGE;
	}

	Length longPoint() {
		return alongSlope().plus(outOfStep()).plus(overhang(left)).plus(overhang(right));
	}

	Length shortPoint() {
		return alongSlope().minus(outOfStep()).minus(setBack(left)).minus(setBack(right));
	}

	PieceEnd start() {
		return end(left, true);
	}

	PieceEnd end() {
		return end(right, false);
	}

	private Length alongSlope() {
		return Mitre.sloped(run, rise);
	}

	private Length outOfStep() {
		if (!isSloped() || sprung) {
			return Length.ZERO;
		}
		return new Length(Math.round(section.face().units() * Math.abs(Math.tan(Math.toRadians(pitch())))));
	}

	private Length overhang(Cut cut) {
		return onSlope(Mitre.inset(section.thickness(), cut.angle()).negated().max(Length.ZERO));
	}

	private Length setBack(Cut cut) {
		return onSlope(Mitre.inset(section.thickness(), cut.angle()).max(Length.ZERO));
	}

	private Length onSlope(Length level) {
		return isSloped() ? new Length(Math.round(level.units() / Math.cos(Math.toRadians(pitch())))) : level;
	}

	private PieceEnd end(Cut cut, boolean atLeft) {
		if (sprung) {
			double spring = Mitre.pitch(section.face(), section.thickness());
			BigDecimal turn = Mitre.flatTurn(spring, cut.angle());
			BigDecimal tilt = Mitre.flatTilt(spring, cut.angle()).abs();
			return new PieceEnd(cut.joint(), turn.abs(), tilt, side(turn, LongSide.LOWER_EDGE, LongSide.UPPER_EDGE));
		}
		BigDecimal onPlan = Mitre.setting(cut.angle());
		if (isSloped()) {
			BigDecimal plumb = Mitre.setting(90 - pitch());
			boolean lower = plumb.signum() > 0 == atLeft;
			return new PieceEnd(cut.joint(), plumb.abs(), onPlan.abs(), lower ? LongSide.LOWER_EDGE : LongSide.UPPER_EDGE);
		}
		return new PieceEnd(cut.joint(), onPlan.abs(), BigDecimal.ZERO, side(onPlan, LongSide.BACK, LongSide.FACE));
	}

	private static LongSide side(BigDecimal signed, LongSide positive, LongSide negative) {
		if (signed.signum() == 0) {
			return LongSide.NONE;
		}
		return signed.signum() > 0 ? positive : negative;
	}
}
