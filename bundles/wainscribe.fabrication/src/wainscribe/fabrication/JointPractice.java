// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import wainscribe.layout.RoomDesign;
import wainscribe.model.Brief;
import wainscribe.model.CasingJoint;
import wainscribe.model.InsideJoint;
import wainscribe.model.SawScale;

/**
 * How joints are made in a room: its own brief wins over the home's, the home's over common practice.
 *
 * @param inside       inside corners of runs; coped unless decided
 * @param baseAtCasing base that is thicker than a casing; a mitred return unless decided
 * @param sawStep      step of the saw's scale in degrees; half a degree unless decided
 */
public record JointPractice(InsideJoint inside, CasingJoint baseAtCasing, BigDecimal sawStep) {

	/** What holds where nothing is decided; common practice. */
	public static final JointPractice COMMON = new JointPractice(InsideJoint.COPE, CasingJoint.RETURN, new BigDecimal("0.5")); //$NON-NLS-1$

	/** Refuses nulls. */
	public JointPractice {
		Objects.requireNonNull(inside);
		Objects.requireNonNull(baseAtCasing);
		Objects.requireNonNull(sawStep);
	}

	/** Returns how joints are made in a room. */
	public static JointPractice of(RoomDesign design) {
		return new JointPractice(
				first(design, brief -> brief.getInside() == InsideJoint.UNRECORDED ? null : brief.getInside()).orElse(COMMON.inside()),
				first(design, brief -> brief.getBaseAtCasing() == CasingJoint.UNRECORDED ? null : brief.getBaseAtCasing())
						.orElse(COMMON.baseAtCasing()),
				first(design, brief -> brief.getSaw() == SawScale.UNRECORDED ? null : brief.getSaw())
						.map(scale -> new BigDecimal(scale.getLiteral())).orElse(COMMON.sawStep()));
	}

	private static <T> Optional<T> first(RoomDesign design, Function<Brief, T> decision) {
		return Stream.of(Optional.ofNullable(design.room().getBrief()), Optional.ofNullable(design.home().getBrief()))
				.flatMap(Optional::stream).map(decision).filter(Objects::nonNull).findFirst();
	}
}
