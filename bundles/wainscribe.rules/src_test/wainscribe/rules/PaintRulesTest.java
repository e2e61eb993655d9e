// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import static wainscribe.rules.RuleCase.asks;
import static wainscribe.rules.RuleCase.fine;
import static wainscribe.rules.RuleCase.wrong;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

import wainscribe.model.Binder;
import wainscribe.model.FanMode;
import wainscribe.model.FanOutlet;
import wainscribe.model.GlossLevel;
import wainscribe.model.Material;
import wainscribe.model.OpeningKind;
import wainscribe.model.Paint;
import wainscribe.model.Primer;
import wainscribe.model.RoomUse;
import wainscribe.model.Surface;
import wainscribe.model.measure.Measure;

/** Rules of paint and air; figures are those of the rules' own sources, see plugin.xml. */
class PaintRulesTest {

	static List<RuleCase> cases() {
		return Stream.of(coats(), air(), fans()).flatMap(List::stream).toList();
	}

	@TestFactory
	Stream<DynamicTest> rules() {
		return RuleCase.tests(cases());
	}

	private static List<RuleCase> coats() {
		return List.of(wrong("sheen-wet-room", "G3 in a bath", "Calm green", site -> bath(site, GlossLevel.G3)),
				fine("sheen-wet-room", "G4 in a bath", site -> bath(site, GlossLevel.G4)),
				asks("sheen-wet-room", "gloss not decided", "Calm green", site -> bath(site, GlossLevel.UNRECORDED)),
				fine("sheen-wet-room", "flat in a bedroom", site -> {
					bath(site, GlossLevel.G1);
					site.room.setUse(RoomUse.BEDROOM);
				}), fine("sheen-wet-room", "a flat ceiling", site -> {
					site.room.setUse(RoomUse.KITCHEN);
					site.paint(Surface.CEILING, "Chalk", GlossLevel.G1);
				}), fine("sheen-wet-room", "the room's own paint hides the home's", site -> {
					bath(site, GlossLevel.G5);
					Paint flat = site.paint(Surface.WALLS, "Flat", GlossLevel.G2);
					site.home.getPaints().add(flat);
				}), wrong("scrub-class", "class 3", "Calm green", site -> scrub(site, 3)),
				fine("scrub-class", "class 2", site -> scrub(site, 2)),
				wrong("mildew-test", "not tested", "Calm green", site -> mildew(site, false)),
				fine("mildew-test", "tested", site -> mildew(site, true)),
				fine("mildew-test", "not known", site -> mildew(site, null)),
				wrong("glossy-prep", "no preparation", "Trim white", site -> gloss(site, false, Primer.NONE)),
				wrong("glossy-prep", "no primer", "Trim white", site -> gloss(site, true, Primer.UNRECORDED)),
				fine("glossy-prep", "cleaned, dulled, primed", site -> gloss(site, true, Primer.BONDING)),
				fine("glossy-prep", "the old coat is not glossy", site -> {
					gloss(site, false, Primer.NONE);
					site.room.getFinishes().getFirst().setGloss(GlossLevel.G4);
				}), fine("glossy-prep", "the glossy coat is elsewhere", site -> {
					gloss(site, false, Primer.NONE);
					site.room.getFinishes().getFirst().getZone().setSurface(Surface.FLOOR);
				}), wrong("oil-paint-check", "unknown trim paint", "Old gloss", site -> old(site, Binder.UNKNOWN)),
				fine("oil-paint-check", "known trim paint", site -> old(site, Binder.ALKYD)),
				wrong("mdf-edge-seal", "no primer", "Trim white", site -> board(site, Primer.NONE)),
				asks("mdf-edge-seal", "primer not decided", "Trim white", site -> board(site, Primer.UNRECORDED)),
				fine("mdf-edge-seal", "primed", site -> board(site, Primer.BONDING)));
	}

	private static void bath(Site site, GlossLevel gloss) {
		site.room.setUse(RoomUse.BATH_WITH_SHOWER);
		site.paint(Surface.WALLS, "Calm green", gloss);
	}

	private static void scrub(Site site, int grade) {
		bath(site, GlossLevel.G4);
		site.room.getPaints().getFirst().setScrub(grade);
	}

	private static void mildew(Site site, Boolean tested) {
		bath(site, GlossLevel.G4);
		site.room.getPaints().getFirst().setMildew(tested);
	}

	private static void gloss(Site site, boolean prepared, Primer primer) {
		site.finish(Surface.TRIM, "Old gloss", GlossLevel.G6);
		Paint paint = site.paint(Surface.TRIM, "Trim white", GlossLevel.G5);
		paint.setClean(prepared);
		paint.setDegloss(prepared);
		paint.setPrimer(primer);
	}

	private static void old(Site site, Binder binder) {
		site.finish(Surface.TRIM, "Old gloss", GlossLevel.G4).setBinder(binder);
		site.paint(Surface.TRIM, "Trim white", GlossLevel.G5);
	}

	private static void board(Site site, Primer primer) {
		site.material = Material.MDF;
		site.paint(Surface.TRIM, "Trim white", GlossLevel.G5).setPrimer(primer);
	}

	private static List<RuleCase> air() {
		return List.of(wrong("paint-temp-min", "a cold wall", "", site -> air(site, "20C", "50%", "9.9C")),
				fine("paint-temp-min", "10 degrees", site -> air(site, "50F", "50%", "10C")),
				wrong("paint-rh-max", "damp", "", site -> air(site, "20C", "85.1%", "20C")),
				fine("paint-rh-max", "85 %", site -> air(site, "20C", "85%", "20C")),
				wrong("paint-dew-margin", "a wall at 19 in air of 22 and 70 %", "", site -> air(site, "22C", "70%", "19C")),
				fine("paint-dew-margin", "a wall at 19.5 in air of 22 and 70 %", site -> air(site, "22C", "70%", "19.5C")),
				fine("paint-dew-margin", "nothing is painted", site -> {
					air(site, "22C", "70%", "17C");
					site.room.getPaints().clear();
				}), wrong("room-rh-target", "60 %", "", site -> air(site, "20C", "60%", "20C")),
				fine("room-rh-target", "under 60 %", site -> air(site, "20C", "59.9%", "20C")));
	}

	private static void air(Site site, String air, String humidity, String surface) {
		site.room.setAir(Measure.parse(air));
		site.room.setHumidity(Measure.parse(humidity));
		site.room.setSurfaceTemperature(Measure.parse(surface));
		site.paint(Surface.WALLS, "Calm green", GlossLevel.G4);
	}

	private static List<RuleCase> fans() {
		return List.of(wrong("vent-rate", "weak at need", "", site -> fan(site, "49cfm", FanMode.DEMAND)),
				fine("vent-rate", "50 cfm at need", site -> fan(site, "50cfm", FanMode.DEMAND)),
				fine("vent-rate", "20 cfm all the time", site -> fan(site, "20cfm", FanMode.CONTINUOUS)),
				wrong("vent-rate", "weak all the time", "", site -> fan(site, "19cfm", FanMode.CONTINUOUS)),
				asks("vent-rate", "mode not recorded", "", site -> fan(site, "30cfm", FanMode.UNRECORDED)),
				wrong("vent-uk-rate", "weak at need", "", site -> {
					fan(site, "14.9l/s", FanMode.DEMAND);
					site.home.setCountry("UK");
				}), fine("vent-uk-rate", "15 litres a second", site -> {
					fan(site, "54m3/h", FanMode.DEMAND);
					site.home.setCountry("UK");
				}), wrong("vent-window-alt", "no fan, small window", "", site -> window(site, 499)),
				fine("vent-window-alt", "no fan, window of 0.28 square metres", site -> window(site, 560)),
				wrong("vent-outdoors", "into the attic", "", site -> {
					fan(site, "80cfm", FanMode.DEMAND);
					site.room.setFanOutlet(FanOutlet.ATTIC);
				}), wrong("vent-outdoors", "nowhere", "", site -> {
					fan(site, "80cfm", FanMode.DEMAND);
					site.room.setFanOutlet(FanOutlet.NONE);
				}), asks("vent-outdoors", "not recorded", "", site -> {
					fan(site, "80cfm", FanMode.DEMAND);
					site.room.setFanOutlet(FanOutlet.UNRECORDED);
				}), fine("vent-outdoors", "outdoors", site -> fan(site, "80cfm", FanMode.DEMAND)));
	}

	private static void fan(Site site, String flow, FanMode mode) {
		site.room.setUse(RoomUse.BATH_WITH_SHOWER);
		site.room.setFan(Measure.parse(flow));
		site.room.setFanOutlet(FanOutlet.OUTDOORS);
		site.room.setFanMode(mode);
	}

	private static void window(Site site, double width) {
		site.room.setUse(RoomUse.BATH_WITH_SHOWER);
		site.opening("A", OpeningKind.WINDOW, "Window", 1000, 1500, width, 500);
	}
}
