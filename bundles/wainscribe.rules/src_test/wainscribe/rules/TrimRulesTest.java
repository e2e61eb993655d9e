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

import wainscribe.model.BoxType;
import wainscribe.model.FixtureType;
import wainscribe.model.Material;
import wainscribe.model.OpeningKind;
import wainscribe.model.TrimType;
import wainscribe.model.length.Length;
import wainscribe.model.measure.Measure;

/** Rules of trim; figures are those of the rules' own sources, see plugin.xml. */
class TrimRulesTest {

	static List<RuleCase> cases() {
		return Stream.of(joints(), water(), nails()).flatMap(List::stream).toList();
	}

	@TestFactory
	Stream<DynamicTest> rules() {
		return RuleCase.tests(cases());
	}

	private static List<RuleCase> joints() {
		return List.of(wrong("rail-vs-casing", "casing thinner than the rail", "Door", site -> casing(site, mm(19.9))),
				fine("rail-vs-casing", "casing as thick as the rail", site -> casing(site, mm(20))),
				asks("rail-vs-casing", "casing not measured", "Door", site -> casing(site, null)),
				fine("rail-vs-casing", "window above the rail",
						site -> site.opening("A", OpeningKind.WINDOW, "Window", 1000, 1200, 800, 900).setCasingDepth(mm(10))),
				wrong("base-vs-casing", "base thicker than casing", "Door", site -> {
					casing(site, mm(20));
					site.trim("A", TrimType.BASE, "Base", 0, 140, 21);
				}), fine("base-vs-casing", "base as thick as casing", site -> {
					casing(site, mm(20));
					site.trim("A", TrimType.BASE, "Base", 0, 140, 20);
				}), fine("base-vs-casing", "base goes", site -> {
					casing(site, mm(20));
					site.trim("A", TrimType.BASE, "Base", 0, 140, 30).setKeep(false);
				}), wrong("single-length-first", "one wall longer than stock", "rail", site -> {
					site.wall("A").setLength(mm(4001));
					site.stock.add(mm(2400));
					site.stock.add(mm(4000));
				}), fine("single-length-first", "stock as long as the walls", site -> site.stock.add(mm(4000))),
				fine("single-length-first", "lengths sold are not known", site -> {
				}), wrong("no-splice-in-frame", "side longer than stock", "A1", site -> {
					site.stock.add(mm(2400));
					site.frame("A", "A1", 80, 220, 2401, 540);
				}), fine("no-splice-in-frame", "side as long as stock", site -> {
					site.stock.add(mm(2400));
					site.frame("A", "A1", 80, 220, 2400, 540);
				}));
	}

	private static void casing(Site site, Length depth) {
		site.opening("A", OpeningKind.DOOR, "Door", 1000, 0, 800, 2000).setCasingDepth(depth);
	}

	private static List<RuleCase> water() {
		return List.of(wrong("mdf-water-contact", "rail at a basin", "Basin", site -> basin(site, 1499)),
				fine("mdf-water-contact", "rail exactly 600 over it", site -> low(site, 240)),
				wrong("mdf-water-contact", "rail just under 600 over it", "Sink", site -> low(site, 240.125)),
				fine("mdf-water-contact", "moisture-resistant board", site -> {
					basin(site, 1499);
					site.material = Material.MR_MDF;
				}), wrong("mdf-water-contact", "round the corner from a tub", "Tub", site -> corner(site, 801)),
				fine("mdf-water-contact", "round the corner, 600 from the tub", site -> corner(site, 0)),
				wrong("wood-rh-band", "dry air", "", site -> site.room.setHumidity(Measure.parse("29%"))),
				wrong("wood-rh-band", "damp air", "", site -> site.room.setHumidity(Measure.parse("56%"))),
				fine("wood-rh-band", "at the upper end", site -> site.room.setHumidity(Measure.parse("55%"))));
	}

	private static void basin(Site site, double x) {
		site.material = Material.MDF;
		site.fixture("A", FixtureType.BASIN, "Basin", x, 600, 500, 250);
	}

	private static void low(Site site, double top) {
		site.material = Material.MDF;
		site.fixture("A", FixtureType.SINK, "Sink", 1000, 0, 500, top);
	}

	/** A tub against wall B, 700 deep, its end at the corner; on wall A a frame, on no wall a rail. */
	private static void corner(Site site, double more) {
		site.material = Material.MDF;
		site.rail = null;
		site.fixture("B", FixtureType.TUB, "Tub", 0, 0, 1500, 560).setDepth(mm(700));
		site.frame("A", "A1", 80, 220, 4000 - 80 - 1300 + more, 300);
	}

	private static List<RuleCase> nails() {
		return List.of(wrong("nail-embed-max", "32 mm into the framing", "", site -> nail(site, 61)),
				fine("nail-embed-max", "exactly 1 1/4 in", site -> nail(site, 60.75)),
				asks("nail-embed-max", "wallboard not measured", "", site -> site.nail = mm(60.75)),
				fine("nail-embed-max", "short whatever the wallboard", site -> site.nail = mm(50)),
				fine("nail-embed-max", "an added board takes it up", site -> {
					nail(site, 65);
					site.board = mm(6);
				}), wrong("nail-embed-min", "on one wall only", "rail", site -> {
					nail(site, 54);
					site.wall("B").setWallboard(mm(12));
				}), fine("nail-embed-min", "25 into the framing", site -> nail(site, 54)),
				wrong("nail-wet-wall", "26 into the framing", "", site -> {
					nail(site, 55);
					site.wall("C").setPlumbing(true);
				}), fine("nail-wet-wall", "25 into the framing", site -> {
					nail(site, 54);
					site.wall("C").setPlumbing(true);
				}), wrong("uk-cable-zones", "a frame under a switch", "", site -> {
					site.home.setCountry("UK");
					site.box("A", BoxType.SWITCH, "Switch", 1000, 1100);
				}), fine("uk-cable-zones", "no switch or socket", site -> site.home.setCountry("UK")),
				fine("uk-cable-zones", "not in the United States", site -> site.box("A", BoxType.SWITCH, "Switch", 1000, 1100)));
	}

	/** A nail through a rail of 20 mm and a wallboard of 9 mm. */
	private static void nail(Site site, double length) {
		site.nail = mm(length);
		site.room.getWalls().forEach(wall -> wall.setWallboard(mm(9)));
	}
}
