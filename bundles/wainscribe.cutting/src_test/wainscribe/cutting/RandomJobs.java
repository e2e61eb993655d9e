// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;

import wainscribe.model.length.Length;

/** Small jobs made from a seed, of all kinds: coarse and fine lengths, with and without kerf, limited and free bars. */
final class RandomJobs {

	private final Random random;

	RandomJobs(long seed) {
		random = new Random(seed);
	}

	/** A job of one profile; if {@code plenty}, one stock length that takes every piece is there in any number. */
	CuttingJob job(int mostPieces, boolean plenty) {
		boolean coarse = random.nextBoolean();
		List<PieceDemand> pieces = new ArrayList<>();
		int wanted = 1 + random.nextInt(mostPieces);
		for (int placed = 0; placed < wanted;) {
			int quantity = Math.min(wanted - placed, 1 + random.nextInt(3) / 2);
			pieces.add(new PieceDemand("P" + pieces.size(), "cap", length(coarse, 3, 24), quantity));
			placed += quantity;
		}
		List<StockLength> stock = new ArrayList<>();
		for (int k = random.nextInt(3); k >= 0; k--) {
			boolean limited = !plenty || k > 0 && random.nextInt(3) == 0;
			stock.add(new StockLength("cap", length(coarse, k == 0 && plenty ? 25 : 8, 40), price(),
				limited ? OptionalInt.of(random.nextInt(3)) : OptionalInt.empty()));
		}
		List<Offcut> offcuts = new ArrayList<>();
		for (int k = random.nextInt(3); k > 0; k--) {
			offcuts.add(new Offcut("O" + k, "cap", length(coarse, 4, 30)));
		}
		Length kerf = new Length[] {Length.ZERO, Length.ofMillimetres(3), Length.ofInches(1, 8)}[random.nextInt(3)];
		return new CuttingJob(pieces, stock, offcuts, kerf, random.nextInt(3) == 0 ? Length.ofMillimetres(7) : Length.ZERO, Length.ZERO);
	}

	private Length length(boolean coarse, int least, int most) {
		Length length = Length.ofMillimetres((least + random.nextInt(most - least)) * 100L);
		return coarse ? length : length.plus(new Length(random.nextInt(100 * 8000)));
	}

	private BigDecimal price() {
		return switch (random.nextInt(4)) {
		case 0 -> BigDecimal.valueOf(1 + random.nextInt(5));
		case 1 -> BigDecimal.valueOf(100 + random.nextInt(900), 2);
		case 2 -> BigDecimal.valueOf(5 * random.nextInt(20), 1);
		default -> BigDecimal.valueOf(1 + random.nextInt(9), 1);
		};
	}
}
