// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import wainscribe.fabrication.Stretch.Stop;
import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Fixture;
import wainscribe.model.FixtureType;
import wainscribe.model.HeatSource;
import wainscribe.model.Material;
import wainscribe.model.Opening;
import wainscribe.model.TrimType;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;

/** What stands in the way of a run of moulding on one wall. Heights are above the floor line. */
record Obstructions(PieceKind kind, Length bottom, Length top, Material material) {

	/** Distance of anything that burns from an electric heater; `heater-clear`, a fire department's and a heater guide. */
	private static final Length FROM_HEATER = Length.ofMillimetres(305);
	/** Distance of anything that burns above a cooktop; `cooktop-above`, IRC M1901.1. */
	private static final Length ABOVE_COOKTOP = Length.ofMillimetres(762);
	/** Distance of anything that burns round a fireplace opening; `fireplace-irc`, from memory: IRC R1001.11. */
	private static final Length ROUND_FIRE = Length.ofMillimetres(152);
	private static final Set<FixtureType> LARGE = EnumSet.of(FixtureType.TOILET, FixtureType.BIDET, FixtureType.VANITY,
			FixtureType.BASIN, FixtureType.SINK, FixtureType.TUB, FixtureType.SHOWER, FixtureType.HEATER, FixtureType.RADIATOR,
			FixtureType.CABINET, FixtureType.RANGE, FixtureType.COOKTOP, FixtureType.HOOD, FixtureType.APPLIANCE,
			FixtureType.WASHER, FixtureType.FIREPLACE, FixtureType.MIRROR);
	/** The base runs on behind what stands clear of the wall. */
	private static final Set<FixtureType> CLEAR_OF_BASE = EnumSet.of(FixtureType.TOILET, FixtureType.BIDET,
			FixtureType.RADIATOR, FixtureType.APPLIANCE, FixtureType.WASHER);

	/** One thing in the way. */
	record Obstruction(Length x0, Length x1, Stop stop) {
	}

	/** Returns what is in the way, in no particular order. */
	List<Obstruction> on(Wall wall) {
		List<Obstruction> found = new ArrayList<>();
		for (Opening opening : wall.getOpenings()) {
			add(Outlines.cased(opening), Stop.CASING, found);
		}
		for (Fixture fixture : wall.getFixtures()) {
			if (stops(fixture)) {
				add(clearance(fixture), Stop.FIXTURE, found);
				fire(fixture).ifPresent(outline -> add(outline, Stop.FIXTURE, found));
			}
		}
		for (Box box : wall.getBoxes()) {
			if (box.getType() == BoxType.PANEL) {
				add(Outlines.of(box), Stop.FIXTURE, found);
			}
		}
		for (ExistingTrim trim : wall.getTrims()) {
			addKept(wall, trim, found);
		}
		return found;
	}

	/** Tells whether moulding of this kind that stays reaches an end of a wall. */
	boolean keptAtEnd(Wall wall, boolean left) {
		return on(wall).stream().filter(obstruction -> obstruction.stop() == Stop.TRIM)
				.anyMatch(kept -> left ? kept.x0().signum() <= 0 : !kept.x1().isLessThan(wall.getLength()));
	}

	private void add(Outline outline, Stop stop, List<Obstruction> found) {
		if (outline.y0().isLessThan(top) && bottom.isLessThan(outline.y1())) {
			found.add(new Obstruction(outline.x0(), outline.x1(), stop));
		}
	}

	private boolean stops(Fixture fixture) {
		boolean behind = Boolean.TRUE.equals(fixture.getBehind());
		return !behind && LARGE.contains(fixture.getType())
				&& !(kind == PieceKind.BASE && CLEAR_OF_BASE.contains(fixture.getType()));
	}

	private Outline clearance(Fixture fixture) {
		Outline outline = Outlines.of(fixture);
		if (!burns()) {
			return outline;
		}
		return switch (fixture.getType()) {
			case HEATER -> fixture.getHeat() == HeatSource.ELECTRIC ? outline.grown(FROM_HEATER) : outline;
			case RANGE, COOKTOP -> outline.grown(Length.ZERO, Length.ZERO, ABOVE_COOKTOP);
			default -> outline;
		};
	}

	private boolean burns() {
		return material != Material.PLASTER && material != Material.METAL;
	}

	private Optional<Outline> fire(Fixture fixture) {
		if (!burns() || fixture.getType() != FixtureType.FIREPLACE || fixture.getOpeningWidth() == null
				|| fixture.getOpeningHeight() == null) {
			return Optional.empty();
		}
		Outline whole = Outlines.of(fixture);
		Length x = fixture.getOpeningX() == null
				? whole.x0().plus(whole.width().minus(fixture.getOpeningWidth()).dividedBy(2)) : fixture.getOpeningX();
		return Optional.of(Outline.ofSize(x, whole.y0(), fixture.getOpeningWidth(), fixture.getOpeningHeight()).grown(ROUND_FIRE));
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
			found.add(new Obstruction(x0, x1, Stop.TRIM));
		} else if (trim.getType() == TrimType.CHAIR_RAIL || trim.getType() == TrimType.PICTURE_RAIL
				|| trim.getType() == TrimType.CASING) {
			Length y = trim.getY() == null ? Length.ZERO : trim.getY();
			Length height = trim.getHeight() == null ? Length.ZERO : trim.getHeight();
			add(new Outline(x0, y, x1, y.plus(height)), Stop.TRIM, found);
		}
	}
}
