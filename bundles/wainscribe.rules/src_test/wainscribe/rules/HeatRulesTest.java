// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import static wainscribe.rules.RuleCase.asks;
import static wainscribe.rules.RuleCase.fine;
import static wainscribe.rules.RuleCase.wrong;
import static wainscribe.rules.Site.mm;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

import wainscribe.layout.MouldingSection;
import wainscribe.model.FixtureType;
import wainscribe.model.HeatSource;
import wainscribe.model.Material;
import wainscribe.model.RoomUse;
import wainscribe.model.length.Length;

/** Rules of heat, fire and passage; figures are those of the rules' own sources, see plugin.xml. */
class HeatRulesTest {

	static List<RuleCase> cases() {
		return Stream.of(heaters(), fires(), others()).flatMap(List::stream).toList();
	}

	@TestFactory
	Stream<DynamicTest> rules() {
		return RuleCase.tests(cases());
	}

	private static List<RuleCase> heaters() {
		return List.of(wrong("heater-clear", "304.9 from a frame", "Heater", site -> heater(site, HeatSource.ELECTRIC, 304.9)),
				fine("heater-clear", "exactly 305 from a frame", site -> heater(site, HeatSource.ELECTRIC, 305)),
				fine("heater-clear", "hydronic", site -> heater(site, HeatSource.HYDRONIC, 80)),
				asks("heater-clear", "not known what heats it", "Heater", site -> heater(site, HeatSource.UNRECORDED, 80)),
				fine("heater-clear", "metal mouldings", site -> {
					heater(site, HeatSource.ELECTRIC, 80);
					site.material = Material.METAL;
				}), wrong("heater-clear", "a shelf above it", "Heater", site -> {
					heater(site, HeatSource.ELECTRIC, 400);
					site.fixture("A", FixtureType.SHELF, "Shelf", 1500, 690, 600, 30);
				}), wrong("heater-clear", "round the corner", Severity.WARNING, "Heater", site -> {
					site.fixture("B", FixtureType.HEATER, "Heater", 100, 0, 600, 400).setHeat(HeatSource.ELECTRIC);
					site.frame("A", "A1", 80, 220, 3840, 540);
				}), fine("heater-clear", "the rail stops short of it",
						site -> site.fixture("A", FixtureType.HEATER, "Heater", 1500, 700, 600, 400).setHeat(HeatSource.ELECTRIC)));
	}

	private static void heater(Site site, HeatSource heat, double away) {
		site.fixture("A", FixtureType.HEATER, "Heater", 1500, 0, 600, 400).setHeat(heat);
		site.frame("A", "A1", 80, 220, 1420 - away, 540);
	}

	private static List<RuleCase> fires() {
		return List.of(wrong("fireplace-irc", "151 from the opening", "Hearth", site -> fire(site, "US", 151)),
				fine("fireplace-irc", "16 thick, 152 away", site -> fire(site, "US", 152)),
				wrong("fireplace-irc", "stands out over an eighth", "Hearth", site -> {
					site.profile = new MouldingSection("", mm(32), mm(20));
					fire(site, "US", 159);
				}), fine("fireplace-irc", "stands out an eighth", site -> {
					site.profile = new MouldingSection("", mm(32), mm(20));
					fire(site, "US", 160);
				}), wrong("fireplace-on", "149 from the opening", "Hearth", site -> fire(site, "CA-ON", 149)),
				fine("fireplace-on", "150 from the opening", site -> fire(site, "CA-ON", 150)),
				wrong("fireplace-on", "thick and 299 above", "Hearth", site -> above(site, 299)),
				fine("fireplace-on", "thick and 300 above", site -> above(site, 300)));
	}

	/** Fire opening from 1500 to 2300, 600 high, in a surround recorded as having trim behind. */
	private static void fire(Site site, String country, double away) {
		site.home.setCountry(country);
		site.rail = null;
		var hearth = site.fixture("A", FixtureType.FIREPLACE, "Hearth", 1450, 0, 900, 650);
		hearth.setBehind(true);
		hearth.setOpeningX(mm(1500));
		hearth.setOpeningWidth(mm(800));
		hearth.setOpeningHeight(mm(600));
		site.frame("A", "A1", 80, 220, 1420 - away, 540);
	}

	private static void above(Site site, double above) {
		fire(site, "CA-ON", 500);
		site.profile = new MouldingSection("", mm(32), mm(39));
		site.frame("A", "A2", 1500, 600 + above, 800, 300);
	}

	private static List<RuleCase> others() {
		return List.of(wrong("cooktop-above", "a cabinet 761 above", "Range", site -> range(site, "US", 761)),
				fine("cooktop-above", "a cabinet 762 above", site -> range(site, "US", 762)),
				wrong("cooktop-above", "a frame above", "Range", site -> {
					range(site, "US", 900);
					site.frame("A", "A1", 900, 1600, 900, 600);
				}), wrong("cooktop-above-on", "a cabinet 749 above", "Range", site -> range(site, "CA-ON", 749)),
				fine("cooktop-above-on", "a cabinet 750 above", site -> range(site, "CA-ON", 750)),
				wrong("cooktop-side", "299 beside", "Range", site -> besideRange(site, 299)),
				fine("cooktop-side", "300 beside", site -> besideRange(site, 300)),
				wrong("hall-width", "913 wide", "", site -> hall(site, 913)),
				fine("hall-width", "914 wide", site -> hall(site, 914)),
				wrong("hall-width", "a board makes it narrow", "", site -> {
					hall(site, 920);
					site.board = mm(9);
					site.boardWalls.add("A");
				}), wrong("foam-trim-size", "too thick", "", site -> foam(site, 13.1)),
				fine("foam-trim-size", "thin", site -> foam(site, 13)),
				wrong("handrail-gap", "a board takes the room", "Handrail", site -> handrail(site, mm(43.9))),
				fine("handrail-gap", "38 left", site -> handrail(site, mm(44))),
				asks("handrail-gap", "gap not measured", "Handrail", site -> handrail(site, null)));
	}

	private static void range(Site site, String country, double above) {
		site.home.setCountry(country);
		site.fixture("A", FixtureType.RANGE, "Range", 1000, 0, 760, 910);
		site.fixture("A", FixtureType.CABINET, "Cabinet", 1000, 910 + above, 760, 400);
	}

	private static void besideRange(Site site, double beside) {
		site.rail = null;
		range(site, "US", 900);
		site.frame("A", "A1", 80, 220, 920 - beside, 540);
	}

	private static void hall(Site site, double width) {
		site.room.setUse(RoomUse.HALL);
		site.wall("B").setLength(mm(width));
		site.wall("D").setLength(mm(width));
	}

	private static void foam(Site site, double thickness) {
		site.rail = null;
		site.material = Material.POLYURETHANE;
		site.profile = new MouldingSection("", mm(32), mm(thickness));
		site.frame("A", "A1", 80, 220, 900, 540);
	}

	private static void handrail(Site site, Length gap) {
		site.board = mm(6);
		site.fixture("A", FixtureType.HANDRAIL, "Handrail", 200, 910, 3000, 50).setGap(gap);
	}
}
