// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import wainscribe.layout.EffectiveBrief;
import wainscribe.layout.MouldingSection;
import wainscribe.model.Brief;
import wainscribe.model.Home;
import wainscribe.model.Material;
import wainscribe.model.ProfileReference;
import wainscribe.model.ProfileUse;
import wainscribe.model.Room;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.BuiltInProfiles;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.profile.TrimProfile;

/** Defaults are common practice; one third of the wall: home-building magazine, wainscot rules of thumb (2.7 m gives 0.9 m). */
class BriefResolverTest {

	private static final WainscribeFactory FACTORY = WainscribeFactory.eINSTANCE;
	private final ProfileCatalogue profiles = BuiltInProfiles.catalogue();
	private final TrimProfile moulding = profiles.forUse(ProfileUse.FRAME).get(0);
	private final Home home = FACTORY.createHome();
	private final Room room = FACTORY.createRoom();

	private EffectiveBrief resolve() {
		return new BriefResolver(profiles).resolve(home, room);
	}

	private static ProfileReference reference(String id) {
		ProfileReference reference = FACTORY.createProfileReference();
		reference.setUse(ProfileUse.FRAME);
		reference.setProfile(id);
		return reference;
	}

	private Brief roomBrief() {
		room.setBrief(FACTORY.createBrief());
		return room.getBrief();
	}

	private Brief homeBrief() {
		home.setBrief(FACTORY.createBrief());
		return home.getBrief();
	}

	@Test
	void metricDefaults() {
		home.setUnits(LengthUnit.MILLIMETRE);
		room.setHeight(Length.ofMillimetres(2700));
		EffectiveBrief brief = resolve();
		assertEquals("frames-under-rail", brief.pattern());
		assertEquals(Length.ofMillimetres(900), brief.railTop());
		assertEquals(new MouldingSection("", Length.ofMillimetres(60), Length.ofMillimetres(20)), brief.rail());
		assertEquals(new MouldingSection("", Length.ofMillimetres(32), Length.ofMillimetres(16)), brief.frame());
		assertEquals(Length.ofMillimetres(140), brief.base());
		assertEquals(Length.ZERO, brief.crown());
		assertEquals(Material.MDF, brief.material());
		assertTrue(brief.gap().isEmpty());
		assertNull(brief.fixedGapY());
	}

	@Test
	void inchDefaultsLieOnTheTape() {
		home.setUnits(LengthUnit.INCH);
		room.setHeight(Length.ofInches(187, 2));
		EffectiveBrief brief = resolve();
		assertEquals(Length.ofInches(31), brief.railTop(), "derived: 93 1/2 / 3 = 31 1/6");
		assertEquals(new MouldingSection("", Length.ofInches(5, 2), Length.ofInches(3, 4)), brief.rail());
		assertEquals(new MouldingSection("", Length.ofInches(5, 4), Length.ofInches(5, 8)), brief.frame());
		assertEquals(Length.ofInches(11, 2), brief.base());
		room.setHeight(null);
		assertEquals(Length.ofInches(32), resolve().railTop(), "an unmeasured room is taken as 96 in high");
	}

	@Test
	void theRoomWinsOverTheHomeDecisionByDecision() {
		homeBrief().setRail(Length.ofMillimetres(800));
		home.getBrief().setGap(Length.ofMillimetres(75));
		home.getBrief().setFrameWidthMin(Length.ofMillimetres(300));
		home.getBrief().setFrameWidthMax(Length.ofMillimetres(500));
		roomBrief().setRail(Length.ofMillimetres(950));
		room.getBrief().setFrameWidthMax(Length.ofMillimetres(700));
		EffectiveBrief brief = resolve();
		assertEquals(Length.ofMillimetres(950), brief.railTop());
		assertEquals(Length.ofMillimetres(75), brief.fixedGap());
		assertNull(brief.widthMin(), "the two ends of a wished width belong together");
		assertEquals(Length.ofMillimetres(700), brief.widthMax());
	}

	@Test
	void aProfileGivesTheMeasuresThatAreNotStatedBesideIt() {
		homeBrief().getProfiles().add(reference(moulding.id()));
		EffectiveBrief brief = resolve();
		assertEquals(new MouldingSection(moulding.id(), moulding.face(), moulding.thickness()), brief.frame());
		assertEquals(Map.of(ProfileUse.FRAME, moulding.id()), brief.profiles());
		roomBrief().setFace(moulding.face().plus(Length.ofMillimetres(1)));
		assertEquals(new MouldingSection("", moulding.face().plus(Length.ofMillimetres(1)), moulding.thickness()), resolve().frame());
	}

	@Test
	void aProfileOfTheRoomWinsOverMeasuresOfTheHome() {
		homeBrief().setFace(Length.ofMillimetres(77));
		roomBrief().getProfiles().add(reference(moulding.id()));
		assertEquals(moulding.face(), resolve().frame().face());
	}

	@Test
	void anUnknownProfileGivesNoMeasures() {
		roomBrief().getProfiles().add(reference("no-such-profile"));
		assertEquals(Length.ofMillimetres(32), resolve().frame().face());
		assertEquals(List.of("no-such-profile"), List.copyOf(resolve().profiles().values()));
	}
}
