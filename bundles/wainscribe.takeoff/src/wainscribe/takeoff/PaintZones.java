// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import wainscribe.fabrication.Piece;
import wainscribe.fabrication.PieceKind;
import wainscribe.layout.RailBand;
import wainscribe.layout.RoomDesign;
import wainscribe.model.Finish;
import wainscribe.model.Material;
import wainscribe.model.Paint;
import wainscribe.model.Primer;
import wainscribe.model.Soundness;
import wainscribe.model.Surface;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/** Measures what each paint of a room covers. New moulding takes the trim paint, without one the paint of its wall. */
final class PaintZones {

	private final RoomMeasure measure;
	private final Girth girth;
	private final Amounts amounts;
	private final RoomPaints paints;

	PaintZones(RoomMeasure measure, Girth girth, Amounts amounts) {
		this.measure = measure;
		this.girth = girth;
		this.amounts = amounts;
		RoomDesign design = measure.design();
		paints = RoomPaints.of(design.home(), design.room());
	}

	/** Returns the zones in the order of the paints. */
	List<PaintZone> all() {
		return paints.all().stream().map(paint -> zone(paint, measure.design().room().getWalls())).toList();
	}

	/** Returns the zones in the order of the paints; those on walls wall by wall, walls on which a paint has nothing left out. */
	List<PaintArea> wallByWall() {
		List<PaintArea> areas = new ArrayList<>();
		for (Paint paint : paints.all()) {
			if (isOnWalls(paint)) {
				for (Wall wall : measure.design().room().getWalls()) {
					PaintZone zone = zone(paint, List.of(wall));
					if (zone.painted().signum() > 0) {
						areas.add(zone.on(wall.getName()));
					}
				}
			} else {
				areas.add(zone(paint, measure.design().room().getWalls()).on("")); //$NON-NLS-1$
			}
		}
		return areas;
	}

	private static boolean isOnWalls(Paint paint) {
		return switch (RoomPaints.surface(paint)) {
			case WALLS, LOWER, UPPER -> true;
			case TRIM, CEILING, FLOOR -> false;
		};
	}

	private PaintZone zone(Paint paint, List<Wall> walls) {
		List<Piece> pieces = measure.cutList().pieces().stream()
				.filter(piece -> takes(paint, piece) && walls.stream().anyMatch(wall -> wall.getName().equals(piece.wall()))).toList();
		BigDecimal mould = girth.area(pieces);
		return switch (RoomPaints.surface(paint)) {
			case TRIM -> trim(paint, pieces, mould);
			case CEILING, FLOOR -> flat(paint);
			case WALLS, LOWER, UPPER -> walls(paint, walls, pieces, mould);
		};
	}

	private boolean takes(Paint paint, Piece piece) {
		return paints.ofMoulding(piece.wall(), piece.kind() == PieceKind.CROWN).filter(taker -> taker == paint).isPresent();
	}

	private PaintZone walls(Paint paint, List<Wall> walls, List<Piece> pieces, BigDecimal mould) {
		BigDecimal gross = BigDecimal.ZERO;
		BigDecimal deducted = BigDecimal.ZERO;
		for (Wall wall : walls) {
			for (Band band : bands(paint, wall)) {
				gross = gross.add(band.whole() ? WallAreas.gross(wall) : area(wall, band));
				deducted = deducted.add(WallAreas.deducted(wall, band.bottom(), band.top()));
			}
		}
		BigDecimal net = gross.subtract(deducted);
		String formula = NLS.bind(Messages.PaintZones_Walls, new Object[] { amounts.areaShown(gross),
				amounts.areaShown(deducted), amounts.areaShown(net) }) + withMoulding(pieces, mould);
		return zone(paint, net, formula, mould);
	}

	/** A band of a wall, heights above the floor line; {@code whole} is the whole wall with its sloped ceiling. */
	private record Band(Length bottom, Length top, boolean whole) {
	}

	private static BigDecimal area(Wall wall, Band band) {
		if (band.top().equals(WallAreas.height(wall))) {
			return WallAreas.gross(wall).subtract(WallAreas.band(wall, Length.ZERO, band.bottom()));
		}
		return WallAreas.band(wall, band.bottom(), band.top());
	}

	private List<Band> bands(Paint paint, Wall wall) {
		Surface surface = RoomPaints.surface(paint);
		if (!RoomPaints.covers(paint, wall.getName())) {
			return List.of();
		}
		Length height = WallAreas.height(wall);
		Optional<RailBand> rail = measure.design().layout().rail();
		Length below = rail.map(RailBand::bottom).orElse(measure.design().brief().railTop()).min(height);
		Length above = rail.map(RailBand::top).orElse(measure.design().brief().railTop()).min(height);
		boolean lower = surface == Surface.LOWER || surface == Surface.WALLS && !paints.has(Surface.LOWER, wall.getName());
		boolean upper = surface == Surface.UPPER || surface == Surface.WALLS && !paints.has(Surface.UPPER, wall.getName());
		if (lower && upper) {
			return List.of(new Band(Length.ZERO, height, true));
		}
		List<Band> bands = new ArrayList<>();
		if (lower) {
			bands.add(new Band(Length.ZERO, below, false));
		}
		if (upper) {
			bands.add(new Band(above, height, false));
		}
		return bands;
	}

	private PaintZone trim(Paint paint, List<Piece> pieces, BigDecimal mould) {
		ExistingTrimArea existing = new ExistingTrimArea(paint);
		BigDecimal kept = existing.kept(measure.design().room());
		BigDecimal casings = existing.casings(measure.design().room());
		String formula = NLS.bind(Messages.PaintZones_Trim, amounts.areaShown(kept), amounts.areaShown(casings))
				+ withMoulding(pieces, mould);
		return zone(paint, kept.add(casings), formula, mould);
	}

	private PaintZone flat(Paint paint) {
		return FloorArea.of(measure.design().room())
				.map(area -> zone(paint, area, NLS.bind(Messages.PaintZones_Flat, amounts.areaShown(area)), BigDecimal.ZERO))
				.orElseGet(() -> zone(paint, null, Messages.PaintZones_NotClosed, BigDecimal.ZERO));
	}

	private String withMoulding(List<Piece> pieces, BigDecimal mould) {
		if (mould.signum() == 0) {
			return ""; //$NON-NLS-1$
		}
		BigDecimal metres = pieces.stream().map(piece -> Amounts.metres(piece.longPoint())).reduce(BigDecimal.ZERO, BigDecimal::add);
		return NLS.bind(Messages.PaintZones_Moulding, amounts.metresShown(metres), amounts.areaShown(mould));
	}

	private PaintZone zone(Paint paint, BigDecimal area, String formula, BigDecimal mould) {
		boolean textured = false;
		boolean unsound = false;
		for (Finish finish : measure.design().room().getFinishes()) {
			if (finish.getZone() != null && sameKind(finish.getZone().getSurface(), RoomPaints.surface(paint))) {
				textured |= Boolean.TRUE.equals(finish.getTexture());
				unsound |= finish.getSound() == Soundness.NO || finish.getSound() == Soundness.CHALKING;
			}
		}
		BigDecimal primed = BigDecimal.ZERO;
		if (paint.getPrimer() != Primer.NONE) {
			boolean surface = area != null && (paint.getPrimer() == Primer.BONDING || unsound);
			primed = (surface ? area : BigDecimal.ZERO).add(bare() ? mould : BigDecimal.ZERO);
		}
		return new PaintZone(measure.cutList().room(), paint, area, formula, mould, textured, primed);
	}

	/** Foam and vinyl mouldings come ready for paint. */
	private boolean bare() {
		Material material = measure.design().layout().material();
		return material != Material.PVC && material != Material.POLYURETHANE;
	}

	private static boolean sameKind(Surface finish, Surface paint) {
		boolean onWalls = paint == Surface.LOWER || paint == Surface.UPPER;
		return finish == paint || onWalls && finish == Surface.WALLS;
	}
}
