// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.rules.Site.mm;

import java.util.List;
import java.util.Random;
import java.util.Set;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import wainscribe.layout.Member;
import wainscribe.layout.PatternRoomDesigner;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.RoomDesigner;
import wainscribe.layout.pattern.BuiltInPatterns;
import wainscribe.model.Brief;
import wainscribe.model.BoxType;
import wainscribe.model.FixtureType;
import wainscribe.model.HeatSource;
import wainscribe.model.Material;
import wainscribe.model.OpeningKind;
import wainscribe.model.TrimType;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;

/**
 * The checks measure by themselves what the layout promises to keep, so the two must agree on rooms that nobody drew: a
 * layout without refusals breaks none of the rules that the solver obeys.
 */
class SolverLayoutsTest {

	private static final Set<String> KEPT = Set.of("frame-gap-equal", "plate-clear-or-contain", "grille-clear",
			"trim-over-fixture", "heater-clear", "cooktop-above", "frame-min-width", "no-splice-in-frame");
	private static final RuleEngine WINDOWS = Site.ENGINE.only(rule -> rule.id().equals("frame-window-align"));
	private static final RoomDesigner DESIGNER = new PatternRoomDesigner(BuiltInPatterns.catalogue(),
			new ProfileCatalogue(List.of())).withoutAdvice();

	@ParameterizedTest
	@ValueSource(strings = { "frames-under-rail", "frames-two-tier", "frames-to-ceiling", "wide-centre", "battens-under-rail", "boards-and-rails" })
	void layoutsKeepWhatTheSolverPromises(String pattern) {
		int frames = 0;
		for (int seed = 0; seed < 60; seed++) {
			Site site = randomRoom(new Random(seed), pattern);
			RoomDesign design = DESIGNER.design(site.home, site.room);
			frames += (int) design.layout().members().count();
			int number = seed;
			List<Finding> broken = Site.ENGINE.only(rule -> KEPT.contains(rule.id())).check(design).stream()
					.filter(finding -> finding.severity() == Severity.ERROR)
					.filter(finding -> !isRefusedRail(design, finding)).toList();
			assertEquals(List.of(), broken, () -> pattern + ", room " + number);
			if (design.layout().objective().anchorsDropped() == 0) {
				assertEquals(List.of(), WINDOWS.check(design), () -> pattern + ", windows of room " + number);
			}
		}
		assertTrue(frames > 300, "only " + frames + " frames and strips were looked at");
	}

	/** A rail that hits a plate stays where the brief has it; layout and rules both say so, and name the same wall. */
	private static boolean isRefusedRail(RoomDesign design, Finding finding) {
		return finding.message().matches(".*\\bof the rail\\b.*")
				&& design.layout().infeasible().stream().anyMatch(plain -> plain.wall() == finding.object().eContainer());
	}

	@ParameterizedTest
	@ValueSource(strings = { "frames-under-rail", "battens-under-rail", "boards-and-rails" })
	void damagedLayoutIsFound(String pattern) {
		Site site = randomRoom(new Random(1), pattern);
		RoomDesign design = DESIGNER.design(site.home, site.room);
		List<Wall> walls = site.room.getWalls().stream()
				.filter(wall -> design.layout().of(wall).orElseThrow().members().findAny().isPresent()).toList();
		for (Wall wall : walls) {
			Member frame = design.layout().of(wall).orElseThrow().members().findFirst().orElseThrow();
			site.box(wall.getName(), BoxType.SWITCH, "on " + frame.id(), 0, 0).setX(frame.x());
			wall.getBoxes().getLast().setY(frame.y());
		}
		List<String> found = Site.ENGINE.only(rule -> rule.id().equals("plate-clear-or-contain")).check(design).stream()
				.map(Finding::element).filter(element -> element.startsWith("on ")).toList();
		assertEquals(walls.size(), found.size());
	}

	private static Site randomRoom(Random random, String pattern) {
		Site site = new Site();
		Brief brief = WainscribeFactory.eINSTANCE.createBrief();
		brief.setPattern(pattern);
		brief.setMaterial(Material.PINE);
		brief.setRail(mm(850 + random.nextInt(150)));
		brief.getStock().add(mm(4880));
		site.room.setBrief(brief);
		if (random.nextBoolean()) {
			site.home.setUnits(LengthUnit.INCH);
		}
		if (random.nextBoolean()) {
			site.trim("C", TrimType.BASE, "Base", 0, 150 + random.nextInt(60), 18);
		}
		double a = 1800 + random.nextInt(3200);
		double b = 1800 + random.nextInt(3200);
		for (Wall wall : site.room.getWalls()) {
			boolean even = wall.getName().equals("A") || wall.getName().equals("C");
			wall.setLength(mm(even ? a : b));
			if (random.nextInt(4) == 0) {
				wall.setFloorRight(mm(random.nextInt(1800) - 900));
			} else if (random.nextInt(4) == 0) {
				wall.setHeightRight(mm(2000 + random.nextInt(1200)));
			}
			furnish(site, wall, random);
		}
		return site;
	}

	/** Puts up to four things side by side on a wall, so that none overlaps another. */
	private static void furnish(Site site, Wall wall, Random random) {
		double x = 50 + random.nextInt(600);
		double end = wall.getLength().approximateMillimetres();
		for (int i = 0; i < 4 && x < end - 1000; i++) {
			double width = place(site, wall.getName(), wall.getName() + i, x, random);
			x += width + 150 + random.nextInt(900);
		}
	}

	private static double place(Site site, String wall, String name, double x, Random random) {
		switch (random.nextInt(8)) {
			case 0 -> site.opening(wall, OpeningKind.DOOR, name, x + 60, 0, 700, 2000);
			case 1 -> site.opening(wall, OpeningKind.WINDOW, name, x + 60, 700 + random.nextInt(700), 700, 900);
			case 2 -> site.fixture(wall, FixtureType.HEATER, name, x, 0, 500, 200 + random.nextInt(500))
					.setHeat(HeatSource.ELECTRIC);
			case 3 -> site.fixture(wall, FixtureType.CABINET, name, x, 0, 600, 900);
			case 4 -> site.fixture(wall, FixtureType.GRILLE, name, x, 200 + random.nextInt(300), 300, 150);
			case 5 -> site.fixture(wall, FixtureType.MIRROR, name, x + 60, 700 + random.nextInt(500), 600, 900).setFramed(true);
			default -> site.box(wall, BoxType.RECEPTACLE, name, x, 250 + random.nextInt(900));
		}
		return 820;
	}
}
