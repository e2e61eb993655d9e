// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import wainscribe.model.Home;
import wainscribe.model.Price;
import wainscribe.model.PriceUnit;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

class PriceListReaderTest {

	private static final String HEADER = "item,unit,pack,pack-length,price\n";

	private final PriceListReader reader = new PriceListReader(LengthUnit.INCH);

	@Test
	void rowsOfAllUnitsAreRead() throws Exception {
		PriceList list = reader.read("# invented\n" + HEADER + "ogee-1.25in,length,,96,11.40\n\n\"Sage, soft\",litre,3.785411784,,48\n"
				+ "brads,each,1000,,7.5\ntape,metre,50,,4\n", "prices.csv");
		assertEquals(List.of(
				new PriceRow("ogee-1.25in", PriceUnit.LENGTH, BigDecimal.ONE, Length.ofInches(96), new BigDecimal("11.40")),
				new PriceRow("Sage, soft", PriceUnit.LITRE, new BigDecimal("3.785411784"), null, new BigDecimal("48")),
				new PriceRow("brads", PriceUnit.EACH, new BigDecimal("1000"), null, new BigDecimal("7.5")),
				new PriceRow("tape", PriceUnit.METRE, new BigDecimal("50"), null, new BigDecimal("4"))), list.rows());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', value = {
			"ogee,length,,96,eleven | prices.csv, row 2, column price: \"eleven\": expected an amount such as 12.50",
			"ogee,length,,96,1.234 | prices.csv, row 2, column price: \"1.234\": expected an amount such as 12.50",
			"ogee,length,,96,-3 | prices.csv, row 2, column price: \"-3\": expected an amount such as 12.50",
			"ogee,stick,,96,3 | prices.csv, row 2, column unit: \"stick\": expected length, litre, metre or each",
			",each,,,3 | prices.csv, row 2, column item: expected the id of a profile, the name of a paint, or the key of a quantity",
			"caulk,each,0,,3 | prices.csv, row 2, column pack: \"0\": expected how much one pack holds, such as 2.5",
			"caulk,each,,96,3 | prices.csv, row 2, column pack-length: \"96\": expected an empty cell, only the unit length has one",
			"ogee,length,,0,3 | prices.csv, row 2, column pack-length: \"0\": expected a length above zero",
			"ogee,length,,72 1/0,3 | prices.csv, row 2, column pack-length: \"72 1/0\": a fraction over zero; expected a length such as 72 1/2",
			"a,each,,,3,more | prices.csv, row 2: expected 5 cells, found 6" })
	void aWrongCellIsNamed(String row, String message) {
		PriceListException problem = assertThrows(PriceListException.class, () -> reader.read(HEADER + row + '\n', "prices.csv"));
		assertEquals(message, problem.getMessage());
	}

	@Test
	void rowsAreCountedAsPhysicalLines() {
		PriceListException problem = assertThrows(PriceListException.class,
				() -> reader.read("# a\n# b\n" + HEADER + "\"two\nlines\",each,,,3\n\ncaulk,each,,,x\n", "prices.csv"));
		assertEquals(7, problem.row());
		assertEquals("price", problem.column());
	}

	@Test
	void aPackTwiceIsRefused() {
		PriceListException problem = assertThrows(PriceListException.class,
				() -> reader.read(HEADER + "caulk,each,,,3\ncaulk,each,1.0,,4\n", "prices.csv"));
		assertEquals("prices.csv, row 3, column item: \"caulk\": this pack has a price already, expected each pack once",
				problem.getMessage());
	}

	@Test
	void aWrongHeaderAndAnEmptyFileAreRefused() {
		assertEquals("prices.csv, row 1: \"item,price\": expected the header item,unit,pack,pack-length,price",
				assertThrows(PriceListException.class, () -> reader.read("item,price\n", "prices.csv")).getMessage());
		assertEquals("prices.csv, row 1: expected the header item,unit,pack,pack-length,price",
				assertThrows(PriceListException.class, () -> reader.read("", "prices.csv")).getMessage());
	}

	@Test
	void filesThatAreNoTextAreRefused(@TempDir Path folder) throws Exception {
		Path file = folder.resolve("prices.csv");
		Files.write(file, new byte[] { (byte) 0xff, (byte) 0xfe, 0x41 });
		assertEquals("prices.csv: expected text in UTF-8", assertThrows(PriceListException.class, () -> reader.read(file)).getMessage());
		assertThrows(PriceListException.class, () -> reader.read(folder));
		Files.write(file, new byte[5_000_000]);
		assertEquals("prices.csv: expected a price list below 4 MB",
				assertThrows(PriceListException.class, () -> reader.read(file)).getMessage());
	}

	@Test
	void aByteOrderMarkAndWindowsLineEndsAreFine(@TempDir Path folder) throws Exception {
		Path file = folder.resolve("prices.csv");
		Files.write(file, ("\uFEFF" + HEADER + "caulk,each,,,3\n").replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8));
		assertEquals(1, reader.read(file).rows().size());
	}

	@Test
	void takingAListIntoAHomeReplacesItsItemsOnly() throws Exception {
		Home home = WainscribeFactory.eINSTANCE.createHome();
		reader.read(HEADER + "caulk,each,,,3\ntape,metre,50,,4\n", "a.csv").applyTo(home);
		String tapeId = home.getPrices().get(1).getId();
		reader.read(HEADER + "caulk,each,,,3.50\ncaulk,each,12,,36\n", "b.csv").applyTo(home);
		assertEquals(List.of("tape", "caulk", "caulk"), home.getPrices().stream().map(Price::getItem).toList());
		assertEquals(new BigDecimal("3.50"), home.getPrices().get(1).getAmount());
		assertEquals(tapeId, home.getPrices().get(0).getId());
		assertEquals(3, home.getPrices().stream().map(Price::getId).distinct().count());
	}
}
