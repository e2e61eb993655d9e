// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import static wainscribe.rules.RuleCase.asks;
import static wainscribe.rules.RuleCase.fine;
import static wainscribe.rules.RuleCase.wrong;
import static wainscribe.rules.Site.in;
import static wainscribe.rules.Site.mm;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.FrameRole;
import wainscribe.layout.MouldingSection;
import wainscribe.layout.RailBand;
import wainscribe.layout.Tier;
import wainscribe.model.BoxType;
import wainscribe.model.Corner;
import wainscribe.model.FixtureType;
import wainscribe.model.HeatSource;
import wainscribe.model.OpeningKind;
import wainscribe.model.TrimType;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/** Rules of layout; figures are those of the rules' own sources, see plugin.xml. */
class LayoutRulesTest {

	static List<RuleCase> cases() {
		return Stream.of(gaps(), proportions(), rails(), fixtures(), plates(), walls()).flatMap(List::stream).toList();
	}

	@TestFactory
	Stream<DynamicTest> rules() {
		return RuleCase.tests(cases());
	}

	/** Three frames on wall A with gaps of 80 but for the shift of the middle one: 1220 + 1240 + 1220 + 4 x 80 = 4000. */
	private static void row(Site site, double shift) {
		site.frame("A", "A1", 80, 220, 1220, 540);
		site.frame("A", "A2", 1380 + shift, 220, 1240, 540);
		site.frame("A", "A3", 2700, 220, 1220, 540);
	}

	private static List<RuleCase> gaps() {
		return List.of(wrong("frame-gap-equal", "the middle frame is moved", "A2", site -> row(site, 20)),
				wrong("frame-gap-equal", "just over the tolerance", "A2", site -> row(site, 0.8)),
				fine("frame-gap-equal", "just within the tolerance", site -> row(site, 0.75)),
				fine("frame-gap-equal", "all equal", site -> row(site, 0)),
				wrong("frame-gap-equal", "one frame hangs low", "A2", site -> {
					site.frame("A", "A1", 80, 220, 1220, 540);
					site.frame("A", "A2", 1380, 210, 1240, 540);
					site.frame("A", "A3", 2700, 220, 1220, 540);
				}), fine("frame-gap-equal", "parted for a plate", site -> {
					site.box("A", BoxType.SWITCH, "S1", 1380, 400);
					site.frame("A", "A1", 80, 220, 1220, 540);
					site.frame("A", "A2", 1530, 220, 1155, 540);
					site.frame("A", "A3", 2765, 220, 1155, 540);
				}), fine("frame-gap-equal", "runs end at a cased door", site -> {
					site.opening("A", OpeningKind.DOOR, "Door", 1800, 0, 800, 2000);
					site.frame("A", "A1", 80, 220, 750, 540);
					site.frame("A", "A2", 910, 220, 750, 540);
					site.frame("A", "A3", 2740, 220, 550, 540);
					site.frame("A", "A4", 3370, 220, 550, 540);
				}), wrong("frame-gap-equal", "uneven beside a cased door", "A2", site -> {
					site.opening("A", OpeningKind.DOOR, "Door", 1800, 0, 800, 2000);
					site.frame("A", "A1", 80, 220, 750, 540);
					site.frame("A", "A2", 910, 220, 790, 540);
				}), fine("frame-gap-equal", "a run keeps 305 from an electric heater", site -> {
					site.fixture("A", FixtureType.HEATER, "Heater", 2000, 0, 600, 400).setHeat(HeatSource.ELECTRIC);
					site.frame("A", "A1", 80, 220, 767.5, 540);
					site.frame("A", "A2", 927.5, 220, 767.5, 540);
				}), fine("frame-gap-equal", "frames follow stairs with square gaps", LayoutRulesTest::stairs),
				wrong("frame-gap-side-range", "narrow gaps", "", site -> {
					row(site, 0);
					site.gap = mm(69);
				}), fine("frame-gap-side-range", "at the lower end", site -> {
					row(site, 0);
					site.gap = mm(70);
				}), fine("frame-gap-side-range", "no frames", site -> site.gap = mm(40)),
				wrong("frame-gap-topbottom-range", "a high gap", "", site -> {
					row(site, 0);
					site.gapY = mm(100.125);
				}), fine("frame-gap-topbottom-range", "at the upper end", site -> {
					row(site, 0);
					site.gapY = mm(100);
				}), wrong("frame-gap-wide-range", "a very wide gap", "", site -> {
					row(site, 0);
					site.gap = mm(191);
				}), fine("frame-gap-wide-range", "at the upper end", site -> {
					row(site, 0);
					site.gap = mm(190);
				}));
	}

	/** Slope 3 in 4, so that a gap of 80 square to it is 100 measured plumb. */
	private static void stairs(Site site) {
		site.wall("A").setFloorRight(mm(3000));
		site.wall("A").setHeight(mm(2700));
		FrameOutline first = new FrameOutline("A1", Tier.LOWER, FrameRole.RUN, mm(80), mm(140 + 60 + 100), mm(1880), mm(500),
				mm(1410), mm(1410));
		FrameOutline second = new FrameOutline("A2", Tier.LOWER, FrameRole.RUN, mm(2040), mm(140 + 1530 + 100), mm(1880),
				mm(500), mm(1410), mm(1410));
		site.frame("A", first);
		site.frame("A", second);
	}

	private static List<RuleCase> proportions() {
		return List.of(wrong("frame-adjacent-wall-match", "26 apart", "", site -> {
			twoRows(site, 726);
		}), fine("frame-adjacent-wall-match", "25 apart", site -> twoRows(site, 725)),
				wrong("frame-min-width", "199 wide", "A1", site -> site.frame("A", "A1", 80, 220, 199, 540)),
				fine("frame-min-width", "200 wide", site -> site.frame("A", "A1", 80, 220, 200, 540)),
				wrong("frame-min-width", "little field", "A1", site -> {
					site.profile = new MouldingSection("", mm(60), mm(16));
					site.frame("A", "A1", 80, 220, 239, 540);
				}), fine("frame-min-width", "field twice the face", site -> {
					site.profile = new MouldingSection("", mm(60), mm(16));
					site.frame("A", "A1", 80, 220, 240, 540);
				}), wrong("frame-aspect", "a slot", "A1", site -> site.frame("A", "A1", 80, 220, 1621, 540)),
				fine("frame-aspect", "three to one", site -> site.frame("A", "A1", 80, 220, 1620, 540)),
				wrong("frame-aspect", "nearly square", "A1", site -> site.frame("A", "A1", 80, 220, 594, 540)),
				fine("frame-aspect", "a true square", site -> site.frame("A", "A1", 80, 220, 540, 540)),
				fine("frame-aspect", "clearly not square", site -> site.frame("A", "A1", 80, 220, 595, 540)),
				fine("frame-aspect", "nearly square on purpose", site -> {
					site.widthMin = mm(500);
					site.widthMax = mm(600);
					site.frame("A", "A1", 80, 220, 560, 540);
				}), wrong("frame-window-align", "frame beside the window's line", "Window", site -> {
					site.opening("A", OpeningKind.WINDOW, "Window", 1500, 1200, 1000, 1000);
					site.frame("A", "A1", 1450, 220, 1120, 540);
				}), fine("frame-window-align", "frame of the cased width", site -> {
					site.opening("A", OpeningKind.WINDOW, "Window", 1500, 1200, 1000, 1000);
					site.frame("A", "A1", 1440, 220, 1120, 540);
				}), fine("frame-window-align", "two close windows share a frame", site -> {
					site.opening("A", OpeningKind.WINDOW, "Left", 1000, 1200, 700, 1000);
					site.opening("A", OpeningKind.WINDOW, "Right", 1850, 1200, 700, 1000);
					site.frame("A", "A1", 940, 220, 1670, 540);
				}), fine("frame-window-align", "too near a door", site -> {
					site.opening("A", OpeningKind.WINDOW, "Window", 1500, 1200, 1000, 1000);
					site.opening("A", OpeningKind.DOOR, "Door", 2660, 0, 800, 2000);
					site.frame("A", "A1", 80, 220, 2400, 540);
				}), fine("frame-window-align", "too near the end of the wall", site -> {
					site.opening("A", OpeningKind.WINDOW, "Window", 100, 1200, 1000, 1000);
					site.frame("A", "A1", 80, 220, 900, 540);
				}));
	}

	private static void twoRows(Site site, double other) {
		site.frame("A", "A1", 80, 220, 700, 540);
		site.frame("A", "A2", 860, 220, 700, 540);
		site.frame("B", "B1", 80, 220, other, 540);
		site.frame("B", "B2", 1000, 220, other, 540);
	}

	private static List<RuleCase> rails() {
		return List.of(wrong("rail-not-half", "at 45 %", "rail", site -> rail(site, 1215)),
				wrong("rail-not-half", "at 55 %", "rail", site -> rail(site, 1485)),
				fine("rail-not-half", "below the band", site -> rail(site, 1214)),
				fine("rail-not-half", "above the band", site -> rail(site, 1486)),
				wrong("rail-height-third", "too low", "rail", site -> rail(site, 600)),
				fine("rail-height-third", "one third", site -> rail(site, 900)),
				fine("rail-height-third", "in the older band", site -> rail(site, 700)),
				wrong("wainscot-two-thirds", "at three quarters", "rail", site -> rail(site, 2025)),
				fine("wainscot-two-thirds", "at two thirds", site -> rail(site, 1800)),
				wrong("rail-near-miss", "just under a sill", "Window", site -> window(site, 920)),
				wrong("rail-near-miss", "49 from the casing", "Window", site -> window(site, 1009)),
				fine("rail-near-miss", "50 from the casing", site -> window(site, 1010)),
				fine("rail-near-miss", "level with the sill", site -> window(site, 900)),
				fine("rail-near-miss", "within 3 of the sill", site -> window(site, 903)),
				wrong("rail-near-miss", "4 off the sill", "Window", site -> window(site, 904)),
				wrong("rail-near-miss", "tub deck behind the rail", "Tub",
						site -> site.fixture("A", FixtureType.TUB, "Tub", 0, 0, 1500, 870)),
				fine("rail-near-miss", "tub deck well below", site -> site.fixture("A", FixtureType.TUB, "Tub", 0, 0, 1500, 560)));
	}

	private static void rail(Site site, double top) {
		site.rail = new RailBand(mm(top - 60), mm(top), mm(20));
	}

	private static void window(Site site, double sill) {
		site.opening("A", OpeningKind.WINDOW, "Window", 1000, sill, 800, 1000);
	}

	/** A moulding of 32 mm that laps 10 mm over the glass stands 22 mm out from it. */
	private static void mirror(Site site, double x) {
		site.fixture("A", FixtureType.MIRROR, "Mirror", x, 300, 600, 300).setFramed(true);
		site.frame("A", "A1", 500, 220, 600, 540);
	}

	private static List<RuleCase> fixtures() {
		return List.of(wrong("trim-over-fixture", "frame through a vanity", "Vanity", site -> {
			site.fixture("A", FixtureType.VANITY, "Vanity", 1000, 0, 900, 850);
			site.frame("A", "A1", 500, 220, 600, 540);
		}), fine("trim-over-fixture", "frame ends at the vanity", site -> {
			site.fixture("A", FixtureType.VANITY, "Vanity", 1100, 0, 900, 850);
			site.frame("A", "A1", 500, 220, 600, 540);
		}), fine("trim-over-fixture", "trim runs behind", site -> {
			site.fixture("A", FixtureType.VANITY, "Vanity", 1000, 0, 900, 850).setBehind(true);
			site.frame("A", "A1", 500, 220, 600, 540);
		}), wrong("trim-over-fixture", "frame over the casing of a door", "Door", site -> {
			site.opening("A", OpeningKind.DOOR, "Door", 1000, 0, 800, 2000);
			site.frame("A", "A1", 300, 220, 650, 540);
		}), fine("trim-over-fixture", "rail stops at a cabinet",
				site -> site.fixture("A", FixtureType.CABINET, "Cabinet", 1000, 0, 600, 2000)),
				wrong("trim-over-fixture", "frame under the moulding round a mirror", "Mirror", site -> mirror(site, 1121)),
				fine("trim-over-fixture", "frame at the moulding round a mirror", site -> mirror(site, 1122)),
				wrong("tank-gap", "too little room", "Toilet", site -> tank(site, mm(21))),
				fine("tank-gap", "6 to spare", site -> tank(site, mm(22))),
				asks("tank-gap", "gap not measured", "Toilet", site -> tank(site, null)),
				fine("tank-gap", "trim stops at the toilet", site -> {
					tank(site, mm(5));
					site.wall("A").getFixtures().getFirst().setBehind(false);
					site.frames.clear();
				}), wrong("accessory-flat-seat", "bar on a stile", "Bar", site -> {
					site.fixture("A", FixtureType.TOWEL_BAR, "Bar", 900, 600, 600, 40);
					site.frame("A", "A1", 500, 220, 600, 540);
				}), wrong("accessory-flat-seat", "9 off a stile", "Ring", site -> ring(site, 1109)),
				fine("accessory-flat-seat", "10 off a stile", site -> ring(site, 1110)),
				wrong("control-clear", "24 off the rail", "Thermostat",
						site -> site.fixture("A", FixtureType.THERMOSTAT, "Thermostat", 1000, 924, 80, 120)),
				fine("control-clear", "25 off the rail",
						site -> site.fixture("A", FixtureType.THERMOSTAT, "Thermostat", 1000, 925, 80, 120)),
				wrong("grille-clear", "24 off a frame", "Return", site -> grille(site, 1124)),
				fine("grille-clear", "25 off a frame", site -> grille(site, 1125)),
				fine("grille-clear", "in the field of a frame", site -> {
					site.fixture("A", FixtureType.GRILLE, "Return", 700, 400, 250, 150);
					site.frame("A", "A1", 500, 220, 600, 540);
				}), wrong("grille-clear", "art over it", "Return", site -> {
					site.fixture("A", FixtureType.GRILLE, "Return", 700, 2000, 250, 150);
					site.fixture("A", FixtureType.ART, "Print", 600, 1500, 400, 500);
				}));
	}

	private static void tank(Site site, Length gap) {
		var toilet = site.fixture("A", FixtureType.TOILET, "Toilet", 1000, 0, 450, 780);
		toilet.setBehind(true);
		toilet.setTankGap(gap);
		site.frame("A", "A1", 500, 220, 1600, 540);
	}

	private static void ring(Site site, double x) {
		site.fixture("A", FixtureType.TOWEL_RING, "Ring", x, 500, 150, 150);
		site.frame("A", "A1", 500, 220, 600, 540);
	}

	private static void grille(Site site, double x) {
		site.fixture("A", FixtureType.REGISTER, "Return", x, 300, 250, 150);
		site.frame("A", "A1", 500, 220, 600, 540);
	}

	private static List<RuleCase> plates() {
		return List.of(wrong("plate-clear-or-contain", "on a stile", "P1", site -> plate(site, 1050, 400)),
				wrong("plate-clear-or-contain", "just under 13 away", "P1", site -> plate(site, 1112.9, 400)),
				wrong("plate-clear-or-contain", "exactly 13 away", Severity.WARNING, "P1", site -> plate(site, 1113, 400)),
				wrong("plate-clear-or-contain", "24.9 away", Severity.WARNING, "P1", site -> plate(site, 1124.9, 400)),
				fine("plate-clear-or-contain", "exactly 25 away", site -> plate(site, 1125, 400)),
				fine("plate-clear-or-contain", "wholly in the field", site -> plate(site, 760, 400)),
				wrong("plate-clear-or-contain", "in the field, 12 from the stile", "P1", site -> plate(site, 544, 400)),
				wrong("plate-clear-or-contain", "on the rail", "P1", site -> plate(site, 3000, 800)),
				wrong("plate-clear-or-contain", "12 over the rail", "P1", site -> plate(site, 3000, 912)),
				fine("plate-clear-or-contain", "25 over the rail", site -> plate(site, 3000, 925)),
				wrong("plate-clear-or-contain", "beside a raked strip", "P1", site -> {
					stairs(site);
					site.box("A", BoxType.SWITCH, "P1", 500, 650);
				}), fine("plate-clear-or-contain", "in the field of a raked frame", site -> {
					stairs(site);
					site.box("A", BoxType.SWITCH, "P1", 800, 450);
				}), fine("plate-clear-or-contain", "half an inch in a home in inches is a warning, one inch is fine", site -> {
					inches(site);
					site.wall("A").getBoxes().getFirst().setX(in(21, 1));
				}), wrong("plate-clear-or-contain", "half an inch in a home in inches", Severity.WARNING, "P1", site -> {
					inches(site);
					site.wall("A").getBoxes().getFirst().setX(in(41, 2));
				}));
	}

	private static void inches(Site site) {
		site.home.setUnits(LengthUnit.INCH);
		site.box("A", BoxType.SWITCH, "P1", 0, 400);
		site.frame("A", new FrameOutline("A1", Tier.LOWER, FrameRole.PLACED, Length.ZERO, mm(220), in(20, 1), mm(540),
				Length.ZERO, Length.ZERO));
	}

	private static void plate(Site site, double x, double y) {
		site.box("A", BoxType.RECEPTACLE, "P1", x, y);
		site.frame("A", "A1", 500, 220, 600, 540);
	}

	private static List<RuleCase> walls() {
		return List.of(wrong("wall-bow", "over the figure", "", site -> {
			site.wall("A").setLength(mm(2400));
			site.wall("A").setBow(mm(6.5));
		}), fine("wall-bow", "6 in 2.4 m", site -> {
			site.wall("A").setLength(mm(2400));
			site.wall("A").setBow(mm(6));
		}), fine("wall-bow", "a long wall in proportion", site -> site.wall("A").setBow(mm(10))),
				fine("wall-bow", "no trim", site -> {
					site.rail = null;
					site.wall("A").setBow(mm(30));
				}), wrong("corner-mitre-half", "91 degrees", "", site -> site.wall("B").setAngle(new BigDecimal("91"))),
				fine("corner-mitre-half", "half a degree off", site -> site.wall("B").setAngle(new BigDecimal("90.5"))),
				fine("corner-mitre-half", "walls in one plane", site -> site.wall("B").setAngle(new BigDecimal("180"))),
				wrong("corner-mitre-half", "by a triangle of 600, 800 and 990", "", site -> {
					Corner corner = WainscribeFactory.eINSTANCE.createCorner();
					corner.setLegThis(mm(600));
					corner.setLegNext(mm(800));
					corner.setDiagonal(mm(990));
					site.wall("B").setCorner(corner);
				}), fine("corner-mitre-half", "by a triangle of 600, 800 and 1000", site -> {
					Corner corner = WainscribeFactory.eINSTANCE.createCorner();
					corner.setLegThis(mm(600));
					corner.setLegNext(mm(800));
					corner.setDiagonal(mm(1000));
					site.wall("B").setCorner(corner);
				}), fine("frame-gap-equal", "kept base moves the tier up", site -> {
					site.trim("A", TrimType.BASE, "Base", 0, 180, 18);
					site.frame("A", "A1", 80, 260, 1880, 500);
					site.frame("A", "A2", 2040, 260, 1880, 500);
				}));
	}
}
