// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import wainscribe.fabrication.Stretch.Halt;
import wainscribe.fabrication.Stretch.Stop;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.clearance.Blockers;
import wainscribe.layout.clearance.Kept;
import wainscribe.layout.glass.GlassFrame;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.Opening;
import wainscribe.model.TrimType;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;

/** What stands in the way of a run of moulding on one wall. Heights are above the floor line. */
record Obstructions(RoomDesign design, PieceKind kind, Length bottom, Length top) {

	/** The base runs on behind what stands clear of the wall. */
	private static final Set<FixtureType> CLEAR_OF_BASE = EnumSet.of(FixtureType.TOILET, FixtureType.BIDET,
			FixtureType.RADIATOR, FixtureType.APPLIANCE, FixtureType.WASHER);

	/** One thing in the way. */
	record Obstruction(Length x0, Length x1, Halt halt) {
	}

	/** Returns what is in the way, in no particular order. */
	List<Obstruction> on(Wall wall) {
		List<Obstruction> found = new ArrayList<>();
		for (Opening opening : wall.getOpenings()) {
			Length casing = opening.getCasing() == null ? Length.ZERO : opening.getCasing();
			add(Outlines.cased(opening), new Halt(Stop.CASING, casing, casing.signum() > 0 ? opening.getCasingDepth() : null), found);
		}
		for (Fixture fixture : wall.getFixtures()) {
			addFixture(fixture, found);
		}
		wall.getBoxes().stream().filter(Blockers::blocks)
				.forEach(box -> add(Outlines.of(box), Halt.of(Stop.FIXTURE), found));
		for (ExistingTrim trim : wall.getTrims()) {
			addKept(wall, trim, found);
		}
		return found;
	}

	private void addFixture(Fixture fixture, List<Obstruction> found) {
		if (!Blockers.blocks(fixture) || kind == PieceKind.BASE && CLEAR_OF_BASE.contains(fixture.getType())) {
			return;
		}
		for (Kept kept : Blockers.of(fixture, Blockers.isCombustible(design.layout().material()))) {
			add(kept.whole(), Halt.of(kept.isDistant() ? Stop.DISTANCE : Stop.FIXTURE), found);
		}
		GlassFrame.of(design.home(), design.room(), design.brief(), fixture)
				.ifPresent(frame -> add(frame.outer(), Halt.of(Stop.FIXTURE), found));
	}

	/** Tells whether moulding of this kind that stays reaches an end of a wall. */
	boolean keptAtEnd(Wall wall, boolean left) {
		return on(wall).stream().filter(obstruction -> obstruction.halt().stop() == Stop.TRIM)
				.anyMatch(kept -> left ? kept.x0().signum() <= 0 : !kept.x1().isLessThan(wall.getLength()));
	}

	private void add(Outline outline, Halt halt, List<Obstruction> found) {
		if (outline.y0().isLessThan(top) && bottom.isLessThan(outline.y1())) {
			found.add(new Obstruction(outline.x0(), outline.x1(), halt));
		}
	}

	/** Moulding of the same kind that stays takes the place of new moulding. */
	private void addKept(Wall wall, ExistingTrim trim, List<Obstruction> found) {
		if (Boolean.FALSE.equals(trim.getKeep())) {
			return;
		}
		Length x0 = trim.getX() == null ? Length.ZERO : trim.getX();
		Length x1 = trim.getWidth() == null ? wall.getLength() : x0.plus(trim.getWidth());
		boolean sameKind = kind == PieceKind.BASE && trim.getType() == TrimType.BASE
				|| kind == PieceKind.CROWN && trim.getType() == TrimType.CROWN;
		if (sameKind) {
			found.add(new Obstruction(x0, x1, Halt.of(Stop.TRIM)));
		} else if (trim.getType() == TrimType.CHAIR_RAIL || trim.getType() == TrimType.PICTURE_RAIL
				|| trim.getType() == TrimType.CASING) {
			Length y = trim.getY() == null ? Length.ZERO : trim.getY();
			Length height = trim.getHeight() == null ? Length.ZERO : trim.getHeight();
			add(new Outline(x0, y, x1, y.plus(height)), Halt.of(Stop.TRIM), found);
		}
	}
}
