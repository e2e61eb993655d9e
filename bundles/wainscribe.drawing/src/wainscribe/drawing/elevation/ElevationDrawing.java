// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.Objects;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.PlainTextMetrics;
import wainscribe.drawing.TextMetrics;
import wainscribe.fabrication.CutLists;
import wainscribe.layout.RailBand;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.glass.GlassFrame;
import wainscribe.model.Fixture;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.profile.ProfileCatalogue;

/**
 * Draws the elevation of a wall: what is there, what is proposed, and the measures. Immutable; the same design always
 * gives an equal drawing.
 */
public final class ElevationDrawing {

	private static final double MARGIN = 4;

	private final ProfileCatalogue catalogue;
	private final TextMetrics metrics;

	/**
	 * Creates the service.
	 *
	 * @param catalogue where the sections of mouldings are found; a moulding that is not in it is drawn plain
	 * @param metrics   widths of texts
	 */
	public ElevationDrawing(ProfileCatalogue catalogue, TextMetrics metrics) {
		this.catalogue = Objects.requireNonNull(catalogue);
		this.metrics = Objects.requireNonNull(metrics);
	}

	/** Creates the service with {@link PlainTextMetrics}. */
	public ElevationDrawing(ProfileCatalogue catalogue) {
		this(catalogue, new PlainTextMetrics());
	}

	/**
	 * Draws a wall.
	 *
	 * @param design  the design of its room
	 * @param wall    one of the room's walls
	 * @param options how to draw
	 * @return the drawing in millimetres, x from the wall's left end, y from the finished floor there
	 */
	public Drawing draw(RoomDesign design, Wall wall, ElevationOptions options) {
		Sheet sheet = new Sheet(options, metrics);
		WallLines lines = new WallLines(wall);
		Bounds bounds = lines.bounds();
		String title = title(design, wall);
		new WallSketch(sheet, lines).draw(
				design.layout().rail().map(RailBand::top).map(Length::approximateMillimetres).orElse(0.0));
		new TreatmentSketch(sheet, lines, catalogue, design).draw(wall);
		wall.getOpenings().forEach(new OpeningSketch(sheet)::draw);
		fixtures(sheet, lines, design, wall);
		wall.getBoxes().forEach(new BoxSketch(sheet)::draw);
		wall.getServices().forEach(new ServiceSketch(sheet, lines)::draw);
		if (options.layers().contains(LayerName.DIMENSION)) {
			new DimensionStrings(sheet, design, wall).draw(bounds);
		}
		if (options.layers().contains(LayerName.TEXT)) {
			new Names(sheet, bounds).draw(design, wall, title);
		}
		if (options.layers().contains(LayerName.PIECE)) {
			new PieceLabels(sheet, bounds, lines, design).draw(wall, new CutLists(catalogue).of(design));
		}
		Bounds extent = sheet.extent(bounds).grown(sheet.paper(MARGIN));
		return new Drawing(title, options.unit(), options.scale(), bounds, extent, sheet.layers());
	}

	/** A mirror that gets a frame is drawn with it. */
	private void fixtures(Sheet sheet, WallLines lines, RoomDesign design, Wall wall) {
		FixtureSketch plain = new FixtureSketch(sheet, lines);
		GlassSketch framed = new GlassSketch(sheet, catalogue);
		for (Fixture fixture : wall.getFixtures()) {
			GlassFrame.of(design.home(), design.room(), design.brief(), fixture).ifPresentOrElse(framed::draw,
					() -> plain.draw(fixture));
		}
	}

	private static String title(RoomDesign design, Wall wall) {
		String room = design.room().getName();
		String name = wall.getName();
		if (room == null || room.isBlank()) {
			return name == null ? "" : name;
		}
		return name == null || name.isBlank() ? room : room + " \u00b7 " + name;
	}
}
