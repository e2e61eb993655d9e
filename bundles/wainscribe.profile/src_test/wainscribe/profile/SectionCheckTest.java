// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;

import wainscribe.model.ProfileUse;
import wainscribe.model.length.Length;
import wainscribe.profile.ProfileSection.Arc;
import wainscribe.profile.ProfileSection.Line;

class SectionCheckTest {

	private static List<String> faults(ProfileSection section, int face, int thickness) {
		TrimProfile profile = new ShapedProfile("trial", "Trial", Set.of(ProfileUse.FRAME), Length.ofMillimetres(face),
				Length.ofMillimetres(thickness), section);
		return new SectionCheck().faults(profile);
	}

	@Test
	void aSoundSectionHasNoFault() {
		assertEquals(List.of(), faults(new SectionPath(0, 0).line(0, 20).leaving(20, -20).section(), 20, 20));
	}

	@Test
	void anOpenSectionNamesThePoint() {
		ProfileSection open = new ProfileSection(List.of(new Line(0, 0, 0, 10), new Line(0, 10.5, 30, 10), new Line(30, 10, 30, 0)));
		assertEquals(List.of("the section is open at 0.000, 10.000"), faults(open, 30, 10));
	}

	@Test
	void anArcThatMissesItsEndIsNamed() {
		ProfileSection bad = new ProfileSection(List.of(new Line(0, 0, 0, 9), new Arc(0, 9, 18, 9, 9, 9, -3), new Line(18, 9, 18, 0)));
		assertEquals(List.of("an arc does not end at 18.000, 9.000"), faults(bad, 18, 18));
	}

	@Test
	void aSectionThatCrossesItselfIsRefused() {
		ProfileSection bow = new SectionPath(0, 0).line(0, 10).line(30, -10).line(0, 10).section();
		assertEquals(1, faults(bow, 30, 10).size());
		assertTrue(faults(bow, 30, 10).getFirst().startsWith("the section crosses itself near"));
	}

	@Test
	void aHollowBackMustNotBreakThroughTheFace() {
		ProfileSection thin = new SectionPath(0, 0).line(0, 8).leaving(62, 62).line(8, 0).section(70, 50, 5, 0);
		assertTrue(faults(thin, 70, 70).getFirst().startsWith("the section crosses itself near"));
	}

	@Test
	void aSectionOfAnotherSizeIsRefused() {
		ProfileSection flat = new SectionPath(0, 0).line(0, 10).line(30, 0).line(0, -10).section();
		assertEquals(List.of("the section runs from 0.000 to 30.000 along the wall, not from 0 to 32.000"), faults(flat, 32, 10));
		assertEquals(List.of("the section stands from 0.000 to 10.000 off the wall, not from 0 to 12.000"), faults(flat, 30, 12));
	}
}
