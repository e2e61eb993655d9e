// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import static wainscribe.rules.RuleCase.asks;
import static wainscribe.rules.RuleCase.fine;
import static wainscribe.rules.RuleCase.wrong;
import static wainscribe.rules.Site.mm;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

import wainscribe.model.Fixing;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Glazing;
import wainscribe.model.OpeningKind;
import wainscribe.model.RoomUse;
import wainscribe.model.Support;
import wainscribe.model.measure.Measure;

/** Rules of fixtures, mirrors, shelves and art; figures are those of the rules' own sources, see plugin.xml. */
class FixturesRulesTest {

	static List<RuleCase> cases() {
		return Stream.of(toilets(), fronts(), heights(), shelves(), glass()).flatMap(List::stream).toList();
	}

	@TestFactory
	Stream<DynamicTest> rules() {
		return RuleCase.tests(cases());
	}

	private static List<RuleCase> toilets() {
		return List.of(wrong("wc-centre", "380 from the corner", "Toilet", site -> toilet(site, 380)),
				fine("wc-centre", "exactly 381 from the corner", site -> toilet(site, 381)),
				wrong("wc-centre", "a board on the side wall takes room", "Toilet", site -> {
					toilet(site, 381);
					site.board = mm(6);
					site.boardWalls.add("D");
				}), wrong("wc-centre", "near a vanity on its wall", "Toilet", site -> beside(site, FixtureType.VANITY, 380)),
				fine("wc-centre", "381 from a vanity", site -> beside(site, FixtureType.VANITY, 381)),
				wrong("wc-centre", "near a tub on the next wall", "Toilet", site -> {
					toilet(site, 4000 - 700 - 380);
					site.fixture("B", FixtureType.TUB, "Tub", 300, 0, 1500, 560).setDepth(mm(700));
				}), fine("wc-centre", "a tub on the next wall, beyond reach", site -> {
					toilet(site, 4000 - 700 - 380);
					site.fixture("B", FixtureType.TUB, "Tub", 900, 0, 1500, 560).setDepth(mm(700));
				}), wrong("wc-centre", "toilet and bidet 761 apart", "Toilet", site -> {
					toilet(site, 1000);
					seat(site, FixtureType.BIDET, "Bidet", 1761);
				}), fine("wc-centre", "toilet and bidet 762 apart", site -> {
					toilet(site, 1000);
					seat(site, FixtureType.BIDET, "Bidet", 1762);
				}), fine("wc-centre", "a cabinet hangs over the toilet", site -> {
					toilet(site, 1000);
					site.fixture("A", FixtureType.CABINET, "Cabinet", 800, 1300, 400, 600).setDepth(mm(200));
				}), wrong("wc-centre", "a wall leans in", "Toilet", site -> {
					site.fixture("B", FixtureType.TOILET, "Toilet", 300, 0, 400, 780).setDepth(mm(700));
					site.wall("A").setAngle(new BigDecimal("45"));
				}), wrong("wc-centre", "at the end of an open room", "Toilet", site -> {
					toilet(site, 380);
					site.room.setOpen(true);
					site.room.getWalls().removeIf(wall -> wall.getName().equals("C") || wall.getName().equals("D"));
				}), fine("wc-centre", "not a rule of the United Kingdom", site -> {
					toilet(site, 300);
					site.home.setCountry("UK");
				}));
	}

	private static Fixture toilet(Site site, double centre) {
		return seat(site, FixtureType.TOILET, "Toilet", centre);
	}

	private static Fixture seat(Site site, FixtureType type, String name, double centre) {
		Fixture seat = site.fixture("A", type, name, centre - 200, 0, 400, 780);
		seat.setDepth(mm(700));
		return seat;
	}

	private static void beside(Site site, FixtureType type, double away) {
		toilet(site, 1000);
		site.fixture("A", type, "Beside", 1000 + away, 0, 900, 850);
	}

	private static List<RuleCase> fronts() {
		return List.of(wrong("wc-front", "opposite wall too near", "Toilet", site -> narrow(site, 700 + 532)),
				fine("wc-front", "533 to the opposite wall", site -> narrow(site, 700 + 533)),
				wrong("wc-front", "a vanity opposite", "Toilet", site -> {
					toilet(site, 1000);
					site.fixture("C", FixtureType.CABINET, "Cabinet", 2700, 0, 700, 900).setDepth(mm(1800));
				}), fine("wc-front", "a cabinet opposite, to the side", site -> {
					toilet(site, 1000);
					site.fixture("C", FixtureType.CABINET, "Cabinet", 1000, 0, 700, 900).setDepth(mm(1800));
				}), wrong("shower-front", "609 to a vanity opposite", "Shower", site -> shower(site, 591)),
				fine("shower-front", "610 to a vanity opposite", site -> shower(site, 590)));
	}

	private static void narrow(Site site, double width) {
		toilet(site, 1000);
		site.wall("B").setLength(mm(width));
		site.wall("D").setLength(mm(width));
	}

	private static void shower(Site site, double depth) {
		site.fixture("A", FixtureType.SHOWER, "Shower", 1000, 0, 900, 2000).setDepth(mm(1800));
		site.fixture("C", FixtureType.VANITY, "Vanity", 2200, 0, 700, 850).setDepth(mm(depth));
	}

	private static List<RuleCase> heights() {
		return Stream.of(height("towel-bar-height", FixtureType.TOWEL_BAR, 1067, 1219.2, 0.5, 40),
				height("robe-hook-height", FixtureType.ROBE_HOOK, 1651, 1778, 0.5, 60),
				height("sconce-height", FixtureType.SCONCE, 1524, 1778, 0.5, 300),
				height("art-centre", FixtureType.ART, 1447.8, 1524, 0.5, 500),
				height("vanity-height", FixtureType.VANITY, 813, 1092, 1, 800),
				height("mirror-bottom", FixtureType.MIRROR, 965, 1067, 0, 700)).flatMap(List::stream).toList();
	}

	/** The height that counts is a share of the thing's own height above its lower edge. */
	private static List<RuleCase> height(String rule, FixtureType type, double least, double most, double share, double high) {
		return List.of(wrong(rule, "too low", "Thing", at(type, least - 1 - share * high, high)),
				fine(rule, "at the lower end", at(type, least - share * high, high)),
				fine(rule, "at the upper end", at(type, most - share * high, high)),
				wrong(rule, "too high", "Thing", at(type, most + 1 - share * high, high)));
	}

	private static Consumer<Site> at(FixtureType type, double y, double high) {
		return site -> {
			site.room.setUse(RoomUse.BATH_WITH_SHOWER);
			site.fixture("A", type, "Thing", 1000, y, 400, high);
		};
	}

	private static List<RuleCase> shelves() {
		return List.of(wrong("shelf-over-wc", "249 above the tank", "Shelf", site -> shelf(site, 1029, 150)),
				fine("shelf-over-wc", "250 above the tank", site -> shelf(site, 1030, 150)),
				wrong("shelf-over-wc", "measured from the lid", "Shelf", site -> {
					shelf(site, 1030, 150);
					site.wall("A").getFixtures().getFirst().setTankTop(mm(800));
				}), wrong("shelf-depth-wc", "too deep", "Shelf", site -> shelf(site, 1100, 201)),
				fine("shelf-depth-wc", "200 deep", site -> shelf(site, 1100, 200)),
				wrong("shelf-into-stud", "heavy on anchors", "Shelf", site -> hung(site, "4kg", "8kg", Fixing.ANCHORS)),
				fine("shelf-into-stud", "light on anchors", site -> hung(site, "4kg", "7kg", Fixing.ANCHORS)),
				fine("shelf-into-stud", "heavy on studs", site -> hung(site, "4kg", "20kg", Fixing.STUDS)),
				asks("shelf-into-stud", "fixing not recorded", "Shelf", site -> hung(site, "4kg", "20kg", Fixing.UNRECORDED)),
				wrong("shelf-into-stud", "26 lb", "Shelf", site -> hung(site, "26lb", "0kg", Fixing.ANCHORS)));
	}

	private static void shelf(Site site, double y, double depth) {
		toilet(site, 1000);
		site.fixture("A", FixtureType.SHELF, "Shelf", 700, y, 600, 30).setDepth(mm(depth));
	}

	private static void hung(Site site, String mass, String load, Fixing fixing) {
		Fixture shelf = site.fixture("A", FixtureType.SHELF, "Shelf", 700, 1500, 600, 30);
		shelf.setMass(Measure.parse(mass));
		shelf.setLoad(Measure.parse(load));
		shelf.setFixing(fixing);
	}

	private static List<RuleCase> glass() {
		return List.of(wrong("tub-glazing", "1523 from a tub", "Window", site -> window(site, 1523, 1500, Glazing.ANNEALED)),
				fine("tub-glazing", "1524 from a tub", site -> window(site, 1524, 1500, Glazing.ANNEALED)),
				fine("tub-glazing", "1524 above the tub", site -> window(site, 100, 1524, Glazing.ANNEALED)),
				fine("tub-glazing", "safety glass", site -> window(site, 100, 1200, Glazing.TEMPERED)),
				asks("tub-glazing", "glass not recorded", "Window", site -> window(site, 100, 1200, Glazing.UNRECORDED)),
				wrong("mirror-support", "glue alone", "Mirror", site -> mirror(site, Support.NONE)),
				fine("mirror-support", "glue and a channel", site -> mirror(site, Support.CHANNEL)),
				asks("mirror-support", "support not recorded", "Mirror", site -> mirror(site, Support.UNRECORDED)),
				wrong("mirror-width", "1221 wide", "Mirror",
						site -> site.fixture("A", FixtureType.MIRROR, "Mirror", 500, 1000, 1221, 800)),
				fine("mirror-width", "1220 wide", site -> site.fixture("A", FixtureType.MIRROR, "Mirror", 500, 1000, 1220, 800)),
				wrong("art-in-wet-room", "in a bathroom", "Print", site -> {
					site.room.setUse(RoomUse.BATH_WITH_TUB);
					site.fixture("A", FixtureType.ART, "Print", 500, 1300, 400, 400);
				}), fine("art-in-wet-room", "in a hall", site -> {
					site.room.setUse(RoomUse.HALL);
					site.fixture("A", FixtureType.ART, "Print", 500, 1300, 400, 400);
				}));
	}

	private static void window(Site site, double away, double sill, Glazing glazing) {
		site.fixture("A", FixtureType.TUB, "Tub", 0, 0, 1500, 560);
		site.opening("A", OpeningKind.WINDOW, "Window", 1500 + away, sill, 800, 800).setGlazing(glazing);
	}

	private static void mirror(Site site, Support support) {
		Fixture mirror = site.fixture("A", FixtureType.MIRROR, "Mirror", 500, 1000, 600, 800);
		mirror.setFixing(Fixing.ADHESIVE);
		mirror.setSupport(support);
	}
}
