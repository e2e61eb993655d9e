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

import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.FixtureType;
import wainscribe.model.RoomUse;

/** Rules of services; figures are those of the rules' own sources, see plugin.xml. */
class ServicesRulesTest {

	static List<RuleCase> cases() {
		return Stream.of(boxes(), baths(), panels()).flatMap(List::stream).toList();
	}

	@TestFactory
	Stream<DynamicTest> rules() {
		return RuleCase.tests(cases());
	}

	private static List<RuleCase> boxes() {
		return List.of(wrong("box-flush-combustible", "a boarded wall", "P1", site -> board(site, "A")),
				fine("box-flush-combustible", "another wall is boarded", site -> board(site, "B")),
				wrong("box-accessible", "behind a mirror", "P1", site -> mirror(site, 1000)),
				fine("box-accessible", "beside a mirror", site -> mirror(site, 1070)));
	}

	private static void board(Site site, String wall) {
		site.board = mm(6);
		site.boardWalls.add(wall);
		site.box("A", BoxType.RECEPTACLE, "P1", 1000, 300);
	}

	private static void mirror(Site site, double x) {
		site.box("A", BoxType.RECEPTACLE, "P1", 1000, 1200);
		site.fixture("A", FixtureType.MIRROR, "Mirror", x, 1000, 600, 800);
	}

	private static List<RuleCase> baths() {
		return List.of(
				wrong("gfci-bath", "not protected in a bath", "P1", site -> bath(site, 3000, false)),
				asks("gfci-bath", "not recorded", "P1", site -> bath(site, 3000, null)),
				fine("gfci-bath", "protected", site -> bath(site, 3000, true)),
				wrong("gfci-bath", "1.8 m from a sink", "P1", site -> kitchen(site, 1800)),
				fine("gfci-bath", "over 1.8 m from a sink", site -> kitchen(site, 1801)),
				wrong("basin-receptacle", "too far", "Basin", site -> bath(site, 901, true)),
				fine("basin-receptacle", "within 900", site -> bath(site, 900, true)),
				wrong("basin-receptacle", "none at all", "Basin", site -> {
					site.room.setUse(RoomUse.BATH_WITH_SHOWER);
					site.fixture("A", FixtureType.BASIN, "Basin", 0, 700, 500, 150);
				}), fine("basin-receptacle", "a basin on its vanity, on the next wall", site -> {
					site.room.setUse(RoomUse.BATH_WITH_SHOWER);
					site.fixture("A", FixtureType.VANITY, "Vanity", 3400, 0, 600, 850).setDepth(mm(500));
					site.fixture("A", FixtureType.BASIN, "Basin", 3450, 850, 500, 150).setDepth(mm(450));
					site.box("B", BoxType.RECEPTACLE, "P1", 700, 1000);
				}), wrong("receptacle-tub-zone", "899 from a tub", "P1", site -> tub(site, 899)),
				fine("receptacle-tub-zone", "900 from a tub", site -> tub(site, 900)),
				fine("receptacle-tub-zone", "a shaver unit", site -> tub(site, 500).setShaver(true)),
				wrong("uk-bath-zones", "across the room", "P1", site -> across(site, 3199)),
				fine("uk-bath-zones", "far enough", site -> across(site, 3200)));
	}

	private static void bath(Site site, double away, Boolean gfci) {
		site.room.setUse(RoomUse.BATH_WITH_SHOWER);
		site.fixture("A", FixtureType.BASIN, "Basin", 0, 700, 500, 300);
		site.box("A", BoxType.RECEPTACLE, "P1", 500 + away, 900).setGfci(gfci);
	}

	private static void kitchen(Site site, double away) {
		site.room.setUse(RoomUse.KITCHEN);
		site.fixture("A", FixtureType.SINK, "Sink", 0, 700, 500, 300);
		site.box("A", BoxType.RECEPTACLE, "P1", 500 + away, 900).setGfci(false);
	}

	private static Box tub(Site site, double away) {
		site.fixture("A", FixtureType.TUB, "Tub", 0, 0, 1500, 560);
		return site.box("A", BoxType.RECEPTACLE, "P1", 1500 + away, 400);
	}

	/** A shower 700 deep on wall A and a socket on wall C, the room being made as wide as told. */
	private static void across(Site site, double width) {
		site.home.setCountry("GB");
		site.wall("B").setLength(mm(width));
		site.wall("D").setLength(mm(width));
		site.fixture("A", FixtureType.SHOWER, "Shower", 1000, 0, 900, 2000).setDepth(mm(700));
		site.box("C", BoxType.RECEPTACLE, "P1", 2400, 400);
	}

	private static List<RuleCase> panels() {
		return List.of(wrong("panel-workspace", "in a bathroom", "Panel", site -> {
			site.room.setUse(RoomUse.BATH_WITH_TUB);
			site.box("A", BoxType.PANEL, "Panel", 1000, 1200);
		}), wrong("panel-workspace", "761 between a cabinet and the corner", "Panel", site -> panel(site, 761)),
				fine("panel-workspace", "762 between a cabinet and the corner", site -> panel(site, 762)));
	}

	private static void panel(Site site, double width) {
		site.box("A", BoxType.PANEL, "Panel", 300, 1200);
		site.fixture("A", FixtureType.CABINET, "Cabinet", width, 0, 600, 900).setDepth(mm(500));
	}
}
