// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import wainscribe.model.length.Length;

/** Problems from the literature with known optima; each file names its source. */
class PublishedSetTest {

	private static CuttingJob job(String name) throws IOException {
		List<PieceDemand> pieces = new ArrayList<>();
		Length bar = Length.ZERO;
		for (String line : Files.readAllLines(Path.of("src_test/sets", name + ".txt"))) {
			String[] words = line.split(" ");
			if (words[0].equals("capacity")) {
				bar = Length.ofMillimetres(Long.parseLong(words[1]));
			} else if (words[0].equals("item")) {
				pieces.add(new PieceDemand("item", "set", Length.ofMillimetres(Long.parseLong(words[1])), Integer.parseInt(words[2])));
			}
		}
		StockLength stock = new StockLength("set", bar, BigDecimal.ONE, OptionalInt.empty());
		return new CuttingJob(pieces, List.of(stock), List.of(), Length.ZERO, Length.ZERO, Length.ZERO);
	}

	@ParameterizedTest
	@CsvSource({ "Falkenauer_t60_00, 20", "Falkenauer_u120_00, 48", "N1C1W1_A, 25", "Schwerin1_BPP1, 18" })
	void knownOptimumIsFoundAndProved(String name, int optimum) throws IOException {
		CuttingJob job = job(name);
		CuttingPlan plan = new CuttingPlanner().plan(job, PlanWatch.PATIENT);
		PlanCheck.check(job, plan);
		assertEquals(optimum, plan.cost().intValueExact());
		assertTrue(plan.isCostProved());
	}
}
