// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.cutting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;

import wainscribe.cutting.CuttingJob;
import wainscribe.cutting.Offcut;
import wainscribe.cutting.PieceDemand;
import wainscribe.cutting.StockLength;
import wainscribe.model.length.Length;

/**
 * Jobs made from a seed: pieces of 10 in to 8 ft, many of them in twos and more, from stock of usual lengths at prices that are
 * roughly in proportion. Even seeds measure to the millimetre and saw 3.2 mm away, odd ones to 1/16 in and 1/8 in.
 */
public final class GeneratedJob {

	private static final int[] MILLIMETRES = { 2400, 2700, 3000, 3600, 4200, 4800, 5400 };
	private static final int[] FEET = { 9, 10, 12, 14, 16 };

	private final Random random;
	private final boolean metric;
	private final List<PieceDemand> pieces = new ArrayList<>();
	private final List<StockLength> stock = new ArrayList<>();
	private final List<Offcut> offcuts = new ArrayList<>();

	private GeneratedJob(long seed) {
		random = new Random(seed);
		metric = seed % 2 == 0;
	}

	/** The job of a room: 20 to 120 pieces of one profile, 3 to 5 stock lengths, of which some are few, up to 5 offcuts. */
	public static CuttingJob ofRoom(long seed) {
		GeneratedJob job = new GeneratedJob(seed);
		job.addPieces("rail", 20 + job.random.nextInt(101));
		job.addStock("rail", true);
		for (int i = job.random.nextInt(6); i > 0; i--) {
			job.offcuts.add(new Offcut("O" + i, "rail", job.length(16, 66)));
		}
		return job.job();
	}

	/** The job of a house: eight profiles that share the pieces evenly. */
	public static CuttingJob ofHouse(long seed, int count) {
		GeneratedJob job = new GeneratedJob(seed);
		for (int p = 0; p < 8; p++) {
			String profile = "profile " + p;
			job.addPieces(profile, count / 8 + (p < count % 8 ? 1 : 0));
			job.addStock(profile, false);
		}
		return job.job();
	}

	private CuttingJob job() {
		Length kerf = metric ? Length.ofMillimetres(new BigDecimal("3.2")) : Length.ofInches(1, 8);
		Length trim = random.nextBoolean() ? Length.ZERO : Length.ofMillimetres(10);
		return new CuttingJob(pieces, stock, offcuts, kerf, trim, Length.ZERO);
	}

	private void addPieces(String profile, int count) {
		for (int left = count; left > 0;) {
			int quantity = Math.min(left, 1 + random.nextInt(2) + (random.nextInt(3) == 0 ? random.nextInt(4) : 0));
			pieces.add(new PieceDemand("P" + pieces.size(), profile, length(10, 95), quantity));
			left -= quantity;
		}
	}

	/** A length between so many inches, on the marks of the tape. */
	private Length length(int least, int most) {
		return metric ? Length.ofMillimetres(least * 25L + random.nextInt((most - least) * 25))
			: Length.ofInches(least * 16L + random.nextInt((most - least) * 16), 16);
	}

	private void addStock(String profile, boolean someFew) {
		double rate = 2 + 4 * random.nextDouble();
		int kinds = 3 + random.nextInt(3);
		List<Integer> lengths = new ArrayList<>();
		for (int i = 0; i < (metric ? MILLIMETRES.length : FEET.length); i++) {
			lengths.add(i);
		}
		Collections.shuffle(lengths, random);
		for (int i = 0; i < kinds; i++) {
			Length length = metric ? Length.ofMillimetres(MILLIMETRES[lengths.get(i)]) : Length.ofInches(12L * FEET[lengths.get(i)]);
			boolean few = someFew && i > 0 && random.nextInt(4) == 0;
			stock.add(new StockLength(profile, i == 0 ? longest(length) : length,
				BigDecimal.valueOf(rate * length.approximateMillimetres() / 1000 * (0.93 + 0.14 * random.nextDouble())).setScale(2,
					RoundingMode.HALF_UP),
				few ? OptionalInt.of(3 + random.nextInt(8)) : OptionalInt.empty()));
		}
	}

	/** One length, there in any number, takes every piece. */
	private Length longest(Length length) {
		return length.max(metric ? Length.ofMillimetres(2440) : Length.ofInches(97));
	}
}
