// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.model.length.Length;

class SectionCheckTest {

	private static Length mm(long millimetres) {
		return Length.ofMillimetres(millimetres);
	}

	private static List<String> faults(ProfileSection section) {
		return new SectionCheck().faults(section).stream().map(SectionFault::sentence).toList();
	}

	private static StraightSegment line(long x0, long y0, long x1, long y1) {
		return new StraightSegment(SectionPoint.ofMillimetres(x0, y0), SectionPoint.ofMillimetres(x1, y1));
	}

	@Test
	void aSoundSectionHasNoFault() {
		assertEquals(List.of(), faults(SectionPath.atOrigin().out(mm(20)).round(mm(20), mm(-20)).section()));
	}

	@Test
	void anOpenSectionNamesThePoint() {
		ProfileSection open = new ProfileSection(List.of(line(0, 0, 0, 10), line(0, 11, 30, 10), line(30, 10, 30, 0)),
				List.of(line(30, 0, 0, 0)));
		assertEquals(List.of("the section is open at 0, 10: the next line begins at 0, 11"), faults(open));
		assertEquals(new Spot(0, 10), new SectionCheck().faults(open).getFirst().where().orElseThrow());
	}

	@Test
	void aSectionWithoutABackOrWithNothingDrawnIsNamed() {
		ProfileSection all = new ProfileSection(List.of(line(0, 0, 0, 10), line(0, 10, 30, 0), line(30, 0, 0, 0)), List.of());
		assertEquals(List.of("the back line is missing: say which lines lie against the wall"), faults(all));
		assertEquals(List.of("nothing is drawn yet: the section has no face"), faults(ProfileSection.EMPTY));
	}

	/** The lines from 0, 10 to 30, 0 and from 30, 10 to 0, 0 cross in their middles. */
	@Test
	void aSectionThatCrossesItselfNamesThePoint() {
		ProfileSection bow = SectionPath.atOrigin().out(mm(10)).line(mm(30), mm(-10)).out(mm(10)).section();
		assertEquals(List.of("the section crosses or touches itself at 15, 5"), faults(bow));
	}

	@Test
	void aSectionThatTouchesItselfOrTurnsBackIsNamed() {
		ProfileSection touching = SectionPath.atOrigin().out(mm(10)).line(mm(15), mm(-10)).line(mm(15), mm(10)).out(mm(-10)).section();
		assertEquals(List.of("the section crosses or touches itself at 15, 0"), faults(touching));
		ProfileSection spike = SectionPath.atOrigin().out(mm(10)).out(mm(5)).out(mm(-5)).along(mm(30)).out(mm(-10)).section();
		assertTrue(faults(spike).getFirst().startsWith("the section crosses or touches itself at 0, 1"), faults(spike)::getFirst);
	}

	/** A loop in one Bezier: by symmetry it crosses itself on x = 15. */
	@Test
	void aLoopInOneCurveIsFound() {
		ProfileSection loop = SectionPath.atOrigin().out(mm(10))
				.curve(SectionPoint.ofMillimetres(80, 40), SectionPoint.ofMillimetres(-50, 40), SectionPoint.ofMillimetres(30, 0))
				.out(mm(-10)).section();
		assertTrue(faults(loop).getFirst().startsWith("the section crosses or touches itself at 15"), faults(loop)::getFirst);
	}

	@Test
	void aHollowBackMustNotBreakThroughTheFace() {
		ProfileSection thin = SectionPath.atOrigin().out(mm(8)).hollow(mm(62), mm(62)).along(mm(8))
				.sectionBehind(List.of(SectionPoint.ofMillimetres(70, 50), SectionPoint.ofMillimetres(5, 0)));
		assertTrue(faults(thin).getFirst().startsWith("the section crosses or touches itself at"));
	}

	@Test
	void absurdSizesAndNoAreaAreNamed() {
		assertEquals(List.of("the section is 900 mm wide and projects 10 mm; a moulding has 1 to 600 mm"),
				faults(SectionPath.atOrigin().out(mm(10)).along(mm(900)).out(mm(-10)).section()));
		Length hair = new Length(80);
		assertEquals(List.of("the section has no area"),
				faults(SectionPath.atOrigin().out(hair).along(mm(20)).out(hair.negated()).section()));
	}

	@Test
	void aFaceBehindTheBackIsNamed() {
		ProfileSection sunk = SectionPath.atOrigin().line(mm(-6), mm(-4)).out(mm(20)).along(mm(26)).out(mm(-16)).section();
		assertEquals(List.of("the face lies behind the back line at -6, -4"), faults(sunk));
	}

	/** A three-quarter bead has its widest place above its neck; a half round has not. */
	@Test
	void onlyAnUndercutFaceCannotBeCoped() {
		ProfileSection bead = SectionPath.atOrigin().out(mm(4)).halfRound(mm(10)).out(mm(-4)).section();
		assertTrue(bead.canBeCoped());
		assertTrue(bead.reversed().canBeCoped());
		ProfileSection neck = SectionPath.atOrigin().out(mm(6)).along(mm(8)).arc(mm(10), mm(0), mm(9)).along(mm(8)).out(mm(-6)).section();
		assertEquals(List.of(), faults(neck));
		assertFalse(neck.canBeCoped());
	}

	@Test
	void settlingPutsASectionAtTheOriginTheRightWayRound() {
		ProfileSection bead = SectionPath.atOrigin().out(mm(4)).halfRound(mm(10)).out(mm(-4)).section();
		assertEquals(bead, bead.reversed().moved(mm(7), mm(-3)).settled());
	}
}
