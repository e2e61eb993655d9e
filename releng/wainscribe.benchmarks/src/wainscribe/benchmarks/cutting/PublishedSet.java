// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.cutting;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;

import wainscribe.cutting.CuttingJob;
import wainscribe.cutting.PieceDemand;
import wainscribe.cutting.StockLength;
import wainscribe.model.length.Length;

/**
 * A bin-packing problem with a known optimum from a text file: {@code # optimum N}, {@code capacity C}, {@code item SIZE COUNT}.
 *
 * @param name    name of the file
 * @param job     the problem with bars at a price of 1 and no kerf
 * @param pieces  number of pieces
 * @param optimum fewest bars
 */
public record PublishedSet(String name, CuttingJob job, int pieces, int optimum) {

	/** Reads all text files of a folder in order of their names. */
	public static List<PublishedSet> all(Path folder) throws IOException {
		List<PublishedSet> sets = new ArrayList<>();
		try (Stream<Path> files = Files.list(folder)) {
			for (Path file : files.filter(path -> path.toString().endsWith(".txt")).sorted().toList()) {
				sets.add(read(file));
			}
		}
		return sets;
	}

	private static PublishedSet read(Path file) throws IOException {
		List<PieceDemand> pieces = new ArrayList<>();
		long capacity = 0;
		int optimum = 0;
		int count = 0;
		for (String line : Files.readAllLines(file)) {
			String[] words = line.split(" +");
			if (line.startsWith("# optimum ")) {
				optimum = Integer.parseInt(words[2]);
			} else if (words[0].equals("capacity")) {
				capacity = Long.parseLong(words[1]);
			} else if (words[0].equals("item")) {
				int quantity = Integer.parseInt(words[2]);
				pieces.add(new PieceDemand("item", "set", Length.ofMillimetres(Long.parseLong(words[1])), quantity));
				count += quantity;
			}
		}
		CuttingJob job = new CuttingJob(pieces, List.of(new StockLength("set", Length.ofMillimetres(capacity), BigDecimal.ONE, OptionalInt.empty())),
			List.of(), Length.ZERO, Length.ZERO, Length.ZERO);
		return new PublishedSet(file.getFileName().toString(), job, count, optimum);
	}
}
