// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import wainscribe.finishes.colour.ColourDifference;
import wainscribe.finishes.colour.ColourIndex;
import wainscribe.finishes.colour.Lab;
import wainscribe.finishes.colour.Srgb;

/** The nearest of 100,000 colours by CIEDE2000: the index against looking at every one. Both must find the same difference. */
final class ColourSearchBenchmark {

	private static final int COLOURS = 100_000;
	private static final int QUESTIONS = 200;
	private static final int WARM_UP = 50;
	private static final double WANTED = 20;

	/** Runs the comparison and tells whether the figure wanted is reached. */
	boolean run(long seed) {
		Random random = new Random(seed);
		List<Lab> list = new ArrayList<>();
		for (int i = 0; i < COLOURS; i++) {
			list.add(colour(random));
		}
		ColourIndex index = new ColourIndex(list);
		Samples scan = new Samples();
		Samples search = new Samples();
		int same = 0;
		for (int i = -WARM_UP; i < QUESTIONS; i++) {
			Lab wanted = colour(random);
			double[] found = new double[2];
			long plain = Samples.nanos(() -> found[0] = scan(list, wanted));
			long quick = Samples.nanos(() -> found[1] = index.nearest(wanted, 1).getFirst().difference());
			if (i >= 0) {
				scan.add(plain);
				search.add(quick);
				same += found[0] == found[1] ? 1 : 0;
			}
		}
		double ratio = scan.median() / search.median();
		boolean done = same == QUESTIONS && ratio >= WANTED;
		Report.line("Questions with the same answer", "%d of %d", same, QUESTIONS);
		Report.line("Looking at every colour, median", "%.2f ms", scan.median() / 1e6);
		Report.line("Index, median (largest)", "%.3f ms (%.3f)", search.median() / 1e6, search.most() / 1e6);
		Report.figure("Ratio", "%.0f", ratio, "same answers, at least 20", done);
		return done;
	}

	private static double scan(List<Lab> list, Lab wanted) {
		double least = Double.POSITIVE_INFINITY;
		for (Lab colour : list) {
			least = Math.min(least, ColourDifference.ciede2000(wanted, colour));
		}
		return least;
	}

	private static Lab colour(Random random) {
		return new Srgb(random.nextInt(256), random.nextInt(256), random.nextInt(256)).toLab();
	}
}
