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
 * projection times the cotangent of the cut. A cut that leans across the face - plumb on a slope, or halving a change of
 * pitch - puts the edges out of step by the face times the tangent of its turn.
 *
 * @param section moulding; of a crown the face is its drop on the wall
 * @param sprung  whether it is a crown, cut lying flat
 * @param run     length along the wall, level
 * @param rise    how far the wall's line climbs over it
 * @param left    cut at the left end
 * @param right   cut at the right end
 */
record RunCut(MouldingSection section, boolean sprung, Length run, Length rise, Cut left, Cut right) {

	private static final double SQUARE = 90;

	/** Returns the pitch in degrees, above 0 if it climbs to the right. */
	double pitch() {
		return Mitre.pitch(run, rise);
	}

	boolean isSloped() {
		return rise.signum() != 0;
	}

	Lie lie() {
		return sprung || left.across() != 0 || right.across() != 0 ? Lie.FLAT : Lie.ON_EDGE;
	}

	Length longPoint() {
		return alongSlope().plus(outOfStep(right).max(Length.ZERO)).minus(outOfStep(left).min(Length.ZERO))
				.plus(overhang(left)).plus(overhang(right));
	}

	/** Returns the length of the shorter edge; zero where the cuts meet before they reach it. */
	Length shortPoint() {
		return alongSlope().plus(outOfStep(right).min(Length.ZERO)).minus(outOfStep(left).max(Length.ZERO))
				.minus(setBack(left)).minus(setBack(right)).max(Length.ZERO);
	}

	PieceEnd start() {
		return end(left, true);
	}

	PieceEnd end() {
		return end(right, false);
	}

	/** Returns the left end on a saw's scale. */
	PieceEnd start(Saw saw) {
		return set(saw, start());
	}

	/** Returns the right end on a saw's scale. */
	PieceEnd end(Saw saw) {
		return set(saw, end());
	}

	/** A sprung moulding is thin: what shows of its joint is the face, as wide as the slope between wall and ceiling. */
	private PieceEnd set(Saw saw, PieceEnd end) {
		if (sprung) {
			return saw.set(end, Mitre.sloped(section.thickness(), section.face()), Length.ZERO);
		}
		return lie() == Lie.ON_EDGE ? saw.set(end, section.thickness(), section.face())
				: saw.set(end, section.face(), section.thickness());
	}

	private Length alongSlope() {
		return Mitre.sloped(run, rise);
	}

	/** Returns how far the upper edge is right of the lower one at a cut. */
	private Length outOfStep(Cut cut) {
		return Mitre.inset(section.face(), SQUARE - cut.across());
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
		BigDecimal onPlan = Mitre.setting(cut.angle());
		if (sprung) {
			double spring = Mitre.pitch(section.face(), section.thickness());
			BigDecimal turn = Mitre.flatTurn(spring, cut.angle());
			BigDecimal tilt = Mitre.flatTilt(spring, cut.angle()).abs();
			return new PieceEnd(cut.joint(), turn.abs(), tilt, side(turn, LongSide.LOWER_EDGE, LongSide.UPPER_EDGE));
		}
		if (lie() == Lie.ON_EDGE) {
			return new PieceEnd(cut.joint(), onPlan.abs(), BigDecimal.ZERO, side(onPlan, LongSide.BACK, LongSide.FACE));
		}
		BigDecimal across = Mitre.setting(SQUARE - cut.across());
		LongSide side = across.signum() == 0 ? side(onPlan, LongSide.BACK, LongSide.FACE)
				: edge(across.signum() > 0 == atLeft);
		return new PieceEnd(cut.joint(), across.abs(), onPlan.abs(), side);
	}

	private static LongSide edge(boolean lower) {
		return lower ? LongSide.LOWER_EDGE : LongSide.UPPER_EDGE;
	}

	private static LongSide side(BigDecimal signed, LongSide positive, LongSide negative) {
		if (signed.signum() == 0) {
			return LongSide.NONE;
		}
		return signed.signum() > 0 ? positive : negative;
	}
}
