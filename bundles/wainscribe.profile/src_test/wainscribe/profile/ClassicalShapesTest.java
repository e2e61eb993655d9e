// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Set;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import wainscribe.model.ProfileUse;
import wainscribe.model.length.Length;

/** Parametric shapes stay sound when face and thickness change within what the trade makes. */
class ClassicalShapesTest {

	private static final Map<String, ProfileShape> SHAPES = Map.of("ogee", ClassicalShapes::ogee, "flat", ClassicalShapes::flat,
			"ogeeRail", ClassicalShapes::ogeeRail, "ovolo", ClassicalShapes::ovolo, "cove", ClassicalShapes::cove, "cap",
			ClassicalShapes::cap, "beadAndCove", ClassicalShapes::beadAndCove);

	@Property(tries = 120)
	void shapesAreClosedAndOfTheSizeAsked(@ForAll @IntRange(min = 20, max = 90) int face,
			@ForAll @IntRange(min = 45, max = 60) int percent) {
		Length f = Length.ofMillimetres(face);
		Length t = new Length(f.units() * percent / 100);
		SHAPES.forEach((name, shape) -> {
			ProfileSection section = shape.section(f.approximateMillimetres(), t.approximateMillimetres());
			TrimProfile profile = new ShapedProfile(name, name, Set.of(ProfileUse.FRAME), f, t, section);
			assertEquals(List.of(), new SectionCheck().faults(profile), name + " " + face + " x " + t);
		});
	}
}
