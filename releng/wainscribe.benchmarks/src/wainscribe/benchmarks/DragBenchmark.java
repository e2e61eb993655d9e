// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks;

import java.util.Comparator;

import wainscribe.benchmarks.paint.DrawingPainter;
import wainscribe.benchmarks.rooms.GeneratedHome;
import wainscribe.benchmarks.rooms.RoomGenerator.Density;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.Palette;
import wainscribe.drawing.elevation.ElevationDrawing;
import wainscribe.drawing.elevation.ElevationOptions;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.RoomDesigner;
import wainscribe.model.Box;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.profile.BuiltInProfiles;

/**
 * Solving a whole room again while an outlet of it is dragged, against painting the wall once.
 * <p>
 * Only the painting of the finished drawing counts as a repaint; making the drawing does not.
 */
final class DragBenchmark {

	private static final int ROUNDS = 60;
	private static final int WIDTH = 1600;
	private static final int HEIGHT = 1000;

	private final RoomDesigner designer = Design.designer().withoutAdvice();
	private final ElevationDrawing elevations = new ElevationDrawing(BuiltInProfiles.catalogue());
	private final DrawingPainter painter = new DrawingPainter(Palette.light().styles(), WIDTH, HEIGHT);

	/** Runs the comparison and tells whether the figure wanted is reached. */
	boolean run(long seed) {
		boolean typical = compare("Typical", Density.TYPICAL, seed, 20);
		return compare("Crowded", Density.CROWDED, seed, 5) && typical;
	}

	private boolean compare(String name, Density density, long seed, int rooms) {
		Samples ratios = new Samples();
		Samples solved = new Samples();
		Samples painted = new Samples();
		for (int i = 0; i < rooms; i++) {
			drag(GeneratedHome.ofOne(seed + i, density), ratios, solved, painted);
		}
		boolean done = ratios.median() < 1;
		Report.line(name + " rooms (" + ratios.count() + "): solving the room again, median", "%.2f ms", solved.median());
		Report.line(name + " rooms: painting the wall once, median", "%.2f ms", painted.median());
		Report.line(name + " rooms: largest ratio", "%.2f", ratios.most());
		Report.figure(name + " rooms: ratio, median", "%.2f", ratios.median(), "below 1", done);
		return done;
	}

	private void drag(GeneratedHome home, Samples ratios, Samples solved, Samples painted) {
		Room room = home.rooms().getFirst();
		Wall wall = room.getWalls().stream().filter(any -> !any.getBoxes().isEmpty())
				.max(Comparator.comparing(any -> any.getBoxes().size())).orElse(null);
		if (wall == null) {
			return;
		}
		Box box = wall.getBoxes().getLast();
		Length start = box.getX();
		Samples solving = new Samples();
		Samples painting = new Samples();
		for (int round = 0; round < ROUNDS; round++) {
			box.setX(start.plus(Length.ofMillimetres(round % 40)));
			long from = System.nanoTime();
			RoomDesign design = designer.design(home.home(), room);
			long between = System.nanoTime();
			Drawing drawing = elevations.draw(design, wall, ElevationOptions.of(home.home()));
			long painter0 = System.nanoTime();
			painter.paint(drawing);
			long end = System.nanoTime();
			if (round >= ROUNDS / 3) {
				solving.add((between - from) / 1e6);
				painting.add((end - painter0) / 1e6);
			}
		}
		solved.add(solving.median());
		painted.add(painting.median());
		ratios.add(solving.median() / painting.median());
	}
}
