// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.BuiltInProfiles;
import wainscribe.profile.ProfileCatalogue;

class ShapeRequestTest {

	private final ProfileCatalogue catalogue = BuiltInProfiles.catalogue();

	@Property
	void anIdIsReadAsItWasWritten(@ForAll @LongRange(min = 1, max = 9_999_999) long width, @ForAll @LongRange(min = 1, max = 9_999_999) long thickness) {
		ShapeRequest request = new ShapeRequest("bead-and-cove", new Length(width), new Length(thickness), LengthUnit.MILLIMETRE, 20);
		assertEquals(Optional.of(request), ShapeRequest.parse(request.id()));
	}

	@Test
	void sizesAreReadInBothUnits() {
		ShapeRequest inches = ShapeRequest.parse("ogee-1.25x0.625in").orElseThrow();
		assertEquals(Length.ofInches(5, 4), inches.width());
		assertEquals(Length.ofInches(5, 8), inches.thickness());
		assertEquals("ogee-1.25x0.625in", inches.id());
		assertEquals(6, ShapeRequest.parse("reeds-48x12-6").orElseThrow().number());
		for (String other : new String[] { "ogee-32", "ogee", "ogee-40x", "ogee-0x15", "ogee-40x15-", "Ogee-40x15", "ogee-40.0000001x15", "", "40x15" }) {
			assertTrue(ShapeRequest.parse(other).isEmpty(), other);
		}
	}

	@Test
	void theCatalogueDrawsWhatIsAskedForOrSaysWhyNot() {
		assertEquals(Length.ofMillimetres(40), catalogue.find("ogee-40x15").orElseThrow().face());
		assertEquals(Optional.empty(), catalogue.fault("ogee-40x15"));
		assertEquals(Optional.empty(), catalogue.fault("ogee-32"));
		assertEquals("there is no profile tartan", catalogue.fault("tartan").orElseThrow());
		assertEquals("there is no profile tartan-40x15", catalogue.fault("tartan-40x15").orElseThrow());
		assertEquals("fillet-40x15-3 names a further number; its shape has none", catalogue.fault("fillet-40x15-3").orElseThrow());
		assertEquals("reeds-48x12-99 is out of limits: reeds from 2 to 12", catalogue.fault("reeds-48x12-99").orElseThrow());
		assertTrue(catalogue.fault("bead-60x9").orElseThrow().startsWith("bead-60x9 cannot be drawn: the"));
		assertTrue(catalogue.find("bead-60x9").isEmpty());
		assertTrue(catalogue.fault("fillet-900x9").orElseThrow().contains("a moulding has 1 to 600 mm"));
	}
}
