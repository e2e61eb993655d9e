// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.model.ProfileUse;
import wainscribe.model.length.Length;
import wainscribe.profile.section.SectionCheck;

class BuiltInProfilesTest {

	private final ProfileCatalogue catalogue = BuiltInProfiles.catalogue();

	@Test
	void everySectionIsClosedAndOfItsSize() {
		SectionCheck check = new SectionCheck();
		for (TrimProfile profile : catalogue.all()) {
			assertEquals(List.of(), check.faults(profile.section()), profile.id());
		}
	}

	@Test
	void idsAreUniqueAndEveryUseIsServed() {
		assertEquals(new BuiltInProfiles().profiles().size(), catalogue.all().size());
		for (ProfileUse use : ProfileUse.values()) {
			assertFalse(catalogue.forUse(use).isEmpty(), use.getLiteral());
		}
	}

	@Test
	void measuresAreExactInBothSystems() {
		TrimProfile ogee = catalogue.find("ogee-1.25in").orElseThrow();
		assertEquals(Length.ofInches(5, 4), ogee.face());
		assertEquals(Length.ofInches(1, 2), ogee.thickness());
		assertEquals(Length.ofInches(11, 16), catalogue.find("bead-and-cove-1.5in").orElseThrow().thickness());
		assertEquals(Length.ofMillimetres(32), catalogue.find("ogee-32").orElseThrow().face());
	}

	@Test
	void namesSayTheSizeInTheUnitOfTheTrade() {
		assertEquals("Ogee, 32 mm x 13 mm", catalogue.find("ogee-32").orElseThrow().name());
		assertEquals("Ogee, 1 1/4\" x 1/2\"", catalogue.find("ogee-1.25in").orElseThrow().name());
	}

	@Test
	void theFirstOfTwoProfilesWithOneIdStays() {
		TrimProfile first = catalogue.all().getFirst();
		TrimProfile second = new TrimProfile(first.id(), "Other", first.uses(), first.section());
		ProfileCatalogue both = new ProfileCatalogue(List.of(first, second));
		assertEquals(1, both.all().size());
		assertTrue(both.find(first.id()).orElseThrow() == first);
	}
}
