// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks;

import java.util.List;
import java.util.stream.LongStream;

import wainscribe.benchmarks.rooms.GeneratedHome;
import wainscribe.benchmarks.rooms.RoomGenerator.Density;
import wainscribe.layout.PatternRoomDesigner;
import wainscribe.model.Room;
import wainscribe.model.length.LengthUnit;

/**
 * A home of 500 rooms against one of 10: reading the survey and laying out every room with all advice. The rooms of the large
 * home are those of the small one fifty times over, so that the ratio shows growth and nothing else.
 */
final class ScalingBenchmark {

	private static final int FEW = 10;
	private static final int MANY = 500;
	private static final int ROUNDS = 3;
	private static final int SMALL_A_ROUND = 10;

	/** Runs the comparison and tells whether the figure wanted is reached. */
	boolean run(long seed) {
		String few = home(FEW, seed);
		String many = home(MANY, seed);
		for (int i = 0; i < SMALL_A_ROUND; i++) {
			layOut(few);
		}
		layOut(many);
		Samples small = new Samples();
		Samples large = new Samples();
		for (int round = 0; round < ROUNDS; round++) {
			for (int i = 0; i < SMALL_A_ROUND; i++) {
				small.add(Samples.nanos(() -> layOut(few)));
			}
			large.add(Samples.nanos(() -> layOut(many)));
		}
		double ratio = large.median() / small.median();
		boolean done = ratio <= (double) MANY / FEW;
		Report.line("Home of " + FEW + " rooms, median", "%.1f ms", small.median() / 1e6);
		Report.line("Home of " + MANY + " rooms, median", "%.0f ms", large.median() / 1e6);
		Report.figure("Ratio", "%.1f", ratio, "at most " + MANY / FEW, done);
		return done;
	}

	private static String home(int rooms, long seed) {
		List<Long> seeds = LongStream.range(0, rooms).map(i -> seed + i % FEW).boxed().toList();
		return GeneratedHome.of(LengthUnit.MILLIMETRE, Density.TYPICAL, seeds).survey();
	}

	private static void layOut(String survey) {
		PatternRoomDesigner designer = Design.designer();
		GeneratedHome home = GeneratedHome.read(survey);
		for (Room room : home.rooms()) {
			designer.design(home.home(), room);
		}
	}
}
