// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.rules.Site.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;

import org.eclipse.core.runtime.OperationCanceledException;
import org.junit.jupiter.api.Test;

import wainscribe.layout.RoomDesign;
import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.model.length.LengthUnit;

class RuleEngineTest {

	private static RuleDescriptor rule(String id, Severity severity, RuleCheck check) {
		return new RuleDescriptor(id, "layout", severity, id, id, "Common practice", SourceStatus.COMMON_PRACTICE,
				Set.of(RuleDescriptor.ANYWHERE), List.of(new RuleOption("clear", "Clear", "13 mm", "1/2\"")), Set.of("Box"),
				"some.contributor", () -> check);
	}

	private static RuleDescriptor onRoom(String id, Severity severity) {
		return rule(id, severity, context -> context.report(Subject.of(context.room()), "found by {0}", id));
	}

	@Test
	void ruleThatThrowsIsOneFindingAndHidesNoOther() {
		RuleEngine engine = new RuleEngine(List.of(onRoom("first", Severity.ADVICE), rule("bad", Severity.ERROR, context -> {
			context.report(Subject.of(context.room()), "half done");
			throw new IllegalStateException("out of nails");
		}), onRoom("last", Severity.ADVICE)));
		List<Finding> found = engine.check(new Site().design());
		assertEquals(List.of("bad", "first", "last"), found.stream().map(Finding::rule).toList());
		Finding failed = found.getFirst();
		assertEquals(FindingKind.RULE_FAILED, failed.kind());
		assertTrue(failed.message().contains("some.contributor") && failed.message().contains("out of nails"),
				failed.message());
	}

	@Test
	void checkWhoseClassCannotBeMadeIsOneFinding() {
		RuleDescriptor broken = new RuleDescriptor("broken", "layout", Severity.ERROR, "broken", "broken", "Common practice",
				SourceStatus.COMMON_PRACTICE, Set.of("any"), List.of(), Set.of(), "some.contributor", () -> {
					throw new NoClassDefFoundError("gone");
				});
		List<Finding> found = new RuleEngine(List.of(broken)).check(new Site().design());
		assertEquals(List.of(FindingKind.RULE_FAILED), found.stream().map(Finding::kind).toList());
	}

	@Test
	void cancelStopsBeforeTheNextRule() {
		AtomicInteger run = new AtomicInteger();
		RuleDescriptor counting = rule("counting", Severity.ADVICE, context -> run.incrementAndGet());
		RuleDescriptor second = rule("second", Severity.ADVICE, context -> run.incrementAndGet());
		RuleEngine engine = new RuleEngine(List.of(counting, second));
		RoomDesign design = new Site().design();
		assertThrows(OperationCanceledException.class,
				() -> engine.check(design, RuleSettings.DEFAULT, () -> run.get() == 1));
		assertEquals(1, run.get());
	}

	@Test
	void cancelWithinACheckIsNoFinding() {
		RuleEngine engine = new RuleEngine(List.of(rule("long", Severity.ADVICE, RuleContext::stopIfCancelled)));
		AtomicInteger asked = new AtomicInteger();
		RoomDesign design = new Site().design();
		assertThrows(OperationCanceledException.class,
				() -> engine.check(design, RuleSettings.DEFAULT, () -> asked.incrementAndGet() > 1));
	}

	@Test
	void findingsStandHeaviestFirstThenByWall() {
		RuleDescriptor walls = rule("walls", Severity.WARNING, context -> {
			List<Wall> backwards = new ArrayList<>(context.walls()).reversed();
			backwards.forEach(wall -> context.report(Subject.of(wall), "wall"));
		});
		List<Finding> found = new RuleEngine(List.of(onRoom("low", Severity.ADVICE), walls, onRoom("high", Severity.ERROR)))
				.check(new Site().design());
		assertEquals(List.of("high", "walls A", "walls B", "walls C", "walls D", "low"),
				found.stream().map(finding -> (finding.rule() + ' ' + finding.wall()).strip()).toList());
	}

	@Test
	void figuresAreShownInTheUnitOfTheHome() {
		RuleDescriptor rule = rule("shown", Severity.ADVICE,
				context -> context.report(Subject.of(context.room()), "wants {0}", context.length("clear")));
		Site site = new Site();
		assertEquals("wants 13 mm", new RuleEngine(List.of(rule)).check(site.design()).getFirst().message());
		site.home.setUnits(LengthUnit.INCH);
		assertEquals("wants 1/2\"", new RuleEngine(List.of(rule)).check(site.design()).getFirst().message());
	}

	/** 25 mm are a little under 63/64 in; the trade says an inch, and so must a message about a rule of 25 mm. */
	@Test
	void figureWithoutARoundInchIsShownAsTheTradeSaysIt() {
		Site site = new Site();
		site.home.setUnits(LengthUnit.INCH);
		site.fixture("A", FixtureType.GRILLE, "Return", 1000, 910, 254, 127);
		String message = site.findings("grille-clear").getFirst().message();
		assertTrue(message.contains("need 1\" all round"), message);
	}

	@Test
	void figureShownLikeTheOneWantedSaysByHowLittleItDiffers() {
		Site site = new Site();
		site.home.setUnits(LengthUnit.INCH);
		site.box("A", BoxType.SWITCH, "P1", 1000, 912.65);
		String message = site.findings("plate-clear-or-contain").getFirst().message();
		assertTrue(message.contains("is ~1/2\" (12.65 mm) from") && message.contains("keep 1/2\" away"), message);
	}

	@Test
	void changedFigureHoldsInsteadOfTheDefault() {
		Site site = new Site();
		Box plate = site.box("A", BoxType.SWITCH, "P1", 1000, 940);
		RuleEngine plates = Site.ENGINE.only(rule -> rule.id().equals("plate-clear-or-contain"));
		assertEquals(0, plates.check(site.design()).size());
		RuleSettings wider = RuleSettings.DEFAULT.with("plate-clear-or-contain", "clear", "50 mm");
		List<Finding> found = plates.check(site.design(), wider, () -> false);
		assertEquals(List.of(plate), found.stream().map(Finding::object).toList());
		assertTrue(found.getFirst().message().contains("50 mm"), found.getFirst().message());
	}

	@Test
	void figureThatCannotBeReadIsOneFinding() {
		RuleSettings wrong = RuleSettings.DEFAULT.with("grille-clear", "clear", "a lot");
		Site site = new Site();
		site.fixture("A", FixtureType.GRILLE, "Return", 100, 100, 100, 100);
		List<Finding> found = Site.ENGINE.only(rule -> rule.id().equals("grille-clear")).check(site.design(), wrong,
				() -> false);
		assertEquals(List.of(FindingKind.RULE_FAILED), found.stream().map(Finding::kind).toList());
	}

	@Test
	void profileIsSwitchedOnBesideTheCountrys() {
		RuleDescriptor comfort = new RuleDescriptor("comfort-rule", "fixtures", Severity.ADVICE, "n", "s", "Common practice",
				SourceStatus.COMMON_PRACTICE, Set.of("comfort"), List.of(), Set.of(), "c",
				() -> context -> context.report(Subject.of(context.room()), "found"));
		RuleEngine engine = new RuleEngine(List.of(comfort));
		RoomDesign design = new Site().design();
		assertEquals(0, engine.check(design).size());
		assertEquals(1, engine.check(design, RuleSettings.DEFAULT.withProfile("comfort"), () -> false).size());
	}

	@Test
	void keyStaysWhenAnElementMoves() {
		Site site = new Site();
		Box plate = site.box("A", BoxType.SWITCH, "P1", 1000, 850);
		String before = site.findings("plate-clear-or-contain").getFirst().key();
		plate.setX(mm(1100));
		assertEquals(before, site.findings("plate-clear-or-contain").getFirst().key());
		plate.setY(mm(1500));
		assertEquals(List.of(), site.findings("plate-clear-or-contain"));
	}

	@Test
	void findingLeadsToItsRoom() {
		Site site = new Site();
		site.box("A", BoxType.SWITCH, "P1", 1000, 850);
		assertEquals(site.room, site.findings("plate-clear-or-contain").getFirst().roomObject().orElseThrow());
	}

	@Test
	void twoRulesOfOneIdAreRefused() {
		List<RuleDescriptor> twins = List.of(onRoom("same", Severity.ADVICE), onRoom("same", Severity.ERROR));
		assertThrows(IllegalArgumentException.class, () -> new RuleEngine(twins));
	}

	@Test
	void emptyRoomBreaksNoRule() {
		Site site = new Site();
		site.room.getWalls().clear();
		site.rail = null;
		assertEquals(List.of(), Site.ENGINE.check(site.design()));
	}

	@Test
	void nothingMeasuredBreaksNoRuleAndNoCheck() {
		Site site = new Site();
		site.room.setHeight(null);
		for (FixtureType type : FixtureType.values()) {
			Fixture bare = WainscribeFactory.eINSTANCE.createFixture();
			bare.setType(type);
			site.wall("A").getFixtures().add(bare);
		}
		site.wall("A").getOpenings().add(WainscribeFactory.eINSTANCE.createOpening());
		site.wall("B").getBoxes().add(WainscribeFactory.eINSTANCE.createBox());
		site.wall("C").getTrims().add(WainscribeFactory.eINSTANCE.createExistingTrim());
		site.room.getPaints().add(WainscribeFactory.eINSTANCE.createPaint());
		site.room.getFinishes().add(WainscribeFactory.eINSTANCE.createFinish());
		List<Finding> failed = Site.ENGINE.check(site.design()).stream()
				.filter(finding -> finding.kind() == FindingKind.RULE_FAILED).toList();
		assertEquals(List.of(), failed);
	}
}
