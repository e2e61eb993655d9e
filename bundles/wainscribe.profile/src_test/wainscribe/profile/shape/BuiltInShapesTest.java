// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import wainscribe.model.ProfileUse;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.TrimProfile;

/** Every shape, in every size of its usual proportions and with every number within its limits, can be cut. */
class BuiltInShapesTest {

	private final List<ProfileShape> shapes = new BuiltInShapes().shapes();

	private static ShapeOutcome draw(ProfileShape shape, int percent, Integer number) {
		ShapeSize usual = shape.usual();
		return new ShapeRequest(shape.id(), usual.ofWidth(percent), usual.ofThickness(percent), LengthUnit.MILLIMETRE, number).draw(shape);
	}

	@Property(tries = 60)
	void everyShapeIsSoundAndExactlyOfTheSizeAsked(@ForAll @IntRange(min = 60, max = 250) int percent) {
		for (ProfileShape shape : shapes) {
			ShapeOutcome outcome = draw(shape, percent, null);
			assertEquals(Optional.empty(), outcome.fault(), shape.id());
			TrimProfile profile = outcome.profile().orElseThrow();
			assertEquals(shape.usual().ofWidth(percent), profile.face(), shape.id());
			assertEquals(shape.usual().ofThickness(percent), profile.thickness(), shape.id());
			assertTrue(profile.girthMillimetres() > profile.face().approximateMillimetres() * 0.99, shape.id());
		}
	}

	@Test
	void everyNumberWithinItsLimitsCanBeDrawnAndNoneOutside() {
		for (ProfileShape shape : shapes) {
			shape.parameter().ifPresent(number -> {
				for (int value = number.least(); value <= number.most(); value++) {
					assertEquals(Optional.empty(), draw(shape, 100, value).fault());
				}
				assertTrue(draw(shape, 100, number.most() + 1).fault().orElseThrow().contains("out of limits"), shape.id());
			});
		}
	}

	@Test
	void thereAreEnoughAndEveryUseIsServed() {
		Set<ProfileUse> served = EnumSet.noneOf(ProfileUse.class);
		Set<String> ids = new HashSet<>();
		for (ProfileShape shape : shapes) {
			served.addAll(shape.uses());
			assertTrue(ids.add(shape.id()), shape.id());
			assertFalse(shape.name().isBlank());
		}
		assertTrue(shapes.size() >= 40, () -> String.valueOf(shapes.size()));
		assertEquals(EnumSet.copyOf(Arrays.asList(ProfileUse.values())), served);
	}

	/** All built-in faces rise or fall along the wall; an undercut would have to be mitred. */
	@Test
	void builtInShapesCanBeCoped() {
		for (ProfileShape shape : shapes) {
			assertTrue(draw(shape, 100, null).profile().orElseThrow().canBeCoped(), shape.id());
		}
	}
}
