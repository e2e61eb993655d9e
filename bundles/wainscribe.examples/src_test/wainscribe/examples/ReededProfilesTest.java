// SPDX-License-Identifier: EPL-2.0
package wainscribe.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.examples.profile.ReededProfiles;
import wainscribe.model.length.Length;
import wainscribe.profile.TrimProfile;
import wainscribe.profile.section.SectionCheck;

class ReededProfilesTest {

	private final TrimProfile reeds = new ReededProfiles().profiles().getFirst();

	@Test
	void sectionIsSoundAndOfTheSizeItSays() {
		assertEquals(List.of(), new SectionCheck().faults(reeds.section()));
		assertEquals(Length.ofMillimetres(36), reeds.face());
		assertEquals(Length.ofMillimetres(12), reeds.thickness());
	}

	/** Three half circles of 12 mm and two edges of 6 mm: 18 pi + 12 (derived). */
	@Test
	void girthFollowsFromTheGeometry() {
		assertEquals(18 * Math.PI + 12, reeds.girthMillimetres(), 1e-9);
	}
}
