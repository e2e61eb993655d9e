// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.finish;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import wainscribe.finishes.coating.CoatingCatalogue;
import wainscribe.finishes.coating.CoatingSystem;
import wainscribe.finishes.suitability.RoomAir;
import wainscribe.finishes.suitability.Suitability;
import wainscribe.finishes.surface.OldSurface;
import wainscribe.finishes.surface.Preparation;
import wainscribe.finishes.surface.PreparationStep;
import wainscribe.layout.RoomDesign;
import wainscribe.model.Finish;
import wainscribe.model.Home;
import wainscribe.model.Paint;
import wainscribe.model.Room;
import wainscribe.model.Surface;
import wainscribe.model.SurfaceZone;
import wainscribe.takeoff.FloorArea;
import wainscribe.takeoff.PaintArea;
import wainscribe.takeoff.Takeoffs;

/** Draws up the finish schedule of a room: each decided paint with its place, kind, amount, preparation and what speaks against it. */
public final class FinishSchedules {

	private static final double MILLIMETRES = 1000;

	private final Takeoffs takeoffs;
	private final CoatingCatalogue coatings;

	/**
	 * Creates the service.
	 *
	 * @param takeoffs measures what paints cover
	 * @param coatings the kinds of paint
	 */
	public FinishSchedules(Takeoffs takeoffs, CoatingCatalogue coatings) {
		this.takeoffs = Objects.requireNonNull(takeoffs);
		this.coatings = Objects.requireNonNull(coatings);
	}

	/** Returns the schedule of a room. */
	public RoomFinish of(RoomDesign design) {
		Room room = design.room();
		RoomAir air = RoomAir.of(room, volume(room));
		List<ZoneFinish> zones = takeoffs.paintAreas(design).stream().map(area -> zone(design, air, area)).toList();
		return new RoomFinish(room.getName() == null ? "" : room.getName(), air, zones); //$NON-NLS-1$
	}

	private ZoneFinish zone(RoomDesign design, RoomAir air, PaintArea area) {
		Paint paint = area.paint();
		Optional<CoatingSystem> system = coatings.nearest(paint);
		List<OldSurface> olds = olds(design.home(), design.room(), area);
		Set<PreparationStep> steps = new LinkedHashSet<>();
		Set<String> reasons = new LinkedHashSet<>();
		for (OldSurface old : olds) {
			system.ifPresent(s -> {
				steps.addAll(Preparation.of(old, s.binder(), paint.getPrimer()));
				reasons.addAll(Suitability.against(air, paint, s, old));
			});
		}
		if (area.surface() == Surface.TRIM && design.layout().walls().stream().anyMatch(wall -> !wall.runs().isEmpty())) {
			steps.addAll(Preparation.ofMoulding(design.layout().material()));
		}
		List<PreparationStep> ordered = new ArrayList<>(steps);
		ordered.sort(Comparator.comparing(PreparationStep::kind));
		return new ZoneFinish(area, system, ordered, List.copyOf(reasons));
	}

	/** The old coats that a paint meets; one of which nothing is known where none was surveyed. */
	private static List<OldSurface> olds(Home home, Room room, PaintArea area) {
		List<OldSurface> met = room.getFinishes().stream().filter(finish -> meets(finish, area)).map(finish -> OldSurface.of(home, finish)).toList();
		return met.isEmpty() ? List.of(OldSurface.unknown(home)) : met;
	}

	private static boolean meets(Finish finish, PaintArea area) {
		SurfaceZone zone = finish.getZone();
		Surface old = zone == null ? Surface.WALLS : zone.getSurface();
		boolean onWalls = area.surface() == Surface.LOWER || area.surface() == Surface.UPPER;
		boolean sameSurface = old == area.surface() || old == Surface.WALLS && onWalls
				|| area.surface() == Surface.WALLS && (old == Surface.LOWER || old == Surface.UPPER);
		boolean sameWall = zone == null || zone.getWalls().isEmpty() || area.wall().isEmpty() || zone.getWalls().contains(area.wall());
		return sameSurface && sameWall;
	}

	private static Optional<Double> volume(Room room) {
		return room.getHeight() == null ? Optional.empty()
				: FloorArea.of(room).map(area -> area.doubleValue() * room.getHeight().approximateMillimetres() / MILLIMETRES);
	}
}
