// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.cli.Outcome.run;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cutting plans from files. */
class CutFilesTest {

	private static final String PIECES = "label,profile,length,quantity\nA,ogee,1000mm,4\n";
	/** Fills the longer length to the end, so that the material itself proves the plan. */
	private static final String FILLING = "label,profile,length,quantity\nA,ogee,1050mm,4\n";
	private static final String STOCK = "profile,length,price,available\nogee,2400mm,10,\nogee,4200mm,15.50,\n";

	@TempDir
	private Path folder;

	@Test
	void theCheapestBarsAreGivenInTheContractsWords() throws IOException {
		// one bar of 4200 mm for 15.50 beats two of 2400 mm for 20.00
		Outcome cut = cut(FILLING, STOCK, null, "--format", "json");
		assertEquals(0, cut.code(), cut.err());
		JsonObject plan = cut.json();
		assertEquals("15.50", plan.get("cost").getAsString());
		assertEquals("15.50", plan.get("lowerBound").getAsString());
		assertTrue(plan.get("optimal").getAsBoolean());
		JsonObject bar = plan.getAsJsonArray("bars").get(0).getAsJsonObject();
		assertEquals(1, plan.getAsJsonArray("bars").size());
		assertEquals("stock", bar.get("source").getAsString());
		assertEquals("ogee", bar.get("profile").getAsString());
		assertEquals("4200", bar.get("stock").getAsString());
		assertEquals("15.50", bar.get("price").getAsString());
		assertEquals("0", bar.get("remainder").getAsString());
		JsonArray pieces = bar.getAsJsonArray("pieces");
		assertEquals(4, pieces.size());
		assertEquals("A", pieces.get(0).getAsJsonObject().get("label").getAsString());
		assertEquals("1050", pieces.get(0).getAsJsonObject().get("length").getAsString());
	}

	@Test
	void kerfTrimAndOffcutsCount() throws IOException {
		// 3 kerfs of 70 mm and 4 x 1000 mm need 4210 mm: the long bar holds three only
		JsonObject plan = cut(PIECES, STOCK, "label,profile,length\nshelf,ogee,1010mm\n", "--format", "json", "--kerf", "70mm",
				"--trim", "10mm").json();
		assertEquals("15.50", plan.get("cost").getAsString());
		List<String> sources = plan.getAsJsonArray("bars").asList().stream()
				.map(bar -> bar.getAsJsonObject().get("source").getAsString()).sorted().toList();
		assertEquals(List.of("offcut", "stock"), sources);
		JsonObject offcut = plan.getAsJsonArray("bars").asList().stream().map(JsonElement::getAsJsonObject)
				.filter(bar -> bar.get("source").getAsString().equals("offcut")).findFirst().orElseThrow();
		assertEquals("shelf", offcut.get("label").getAsString());
		assertEquals("0.00", offcut.get("price").getAsString());
		assertEquals("0", offcut.get("remainder").getAsString());
	}

	@Test
	void inchesCarriageReturnsAndAByteOrderMarkAreFine() throws IOException {
		String pieces = "\uFEFF# units: in\r\nlabel,profile,length,quantity\r\n\"say \"\"A\"\"\",ogee,6' 1 1/2\",1\r\n";
		String stock = "\uFEFF# units: mm\r\nlength,price,profile\r\n2000,7,ogee\r\n";
		JsonObject bar = cut(pieces, stock, null, "--format", "json", "--kerf", "1/8").json().getAsJsonArray("bars").get(0)
				.getAsJsonObject();
		JsonObject piece = bar.getAsJsonArray("pieces").get(0).getAsJsonObject();
		assertEquals("say \"A\"", piece.get("label").getAsString());
		assertEquals("1866.9", piece.get("length").getAsString());
		// 2000 - 1866.9 - 3.175
		assertEquals("129.925", bar.get("remainder").getAsString());
	}

	@Test
	void tooFewLengthsExitWithOneAndSayWhatIsMissing() throws IOException {
		String stock = "profile,length,price,available\nogee,2400mm,10,1\n";
		Outcome cut = cut(PIECES, stock, null, "--format", "json");
		assertEquals(1, cut.code(), cut.err());
		assertEquals("10.00", cut.json().get("cost").getAsString());
		JsonObject missing = cut.json().getAsJsonArray("unplaced").get(0).getAsJsonObject();
		assertEquals("A", missing.get("label").getAsString());
		assertEquals(2, missing.get("quantity").getAsInt());
		Outcome text = cut(PIECES, stock, null);
		assertEquals(1, text.code());
		assertTrue(text.out().contains("Missing: there is not enough stock for\n  2 x A 1000 mm of ogee\n"), text.out());
		assertTrue(text.out().contains("1 x 2400 mm of ogee at 10.00 = 10.00"), text.out());
	}

	@Test
	void textSaysWhatIsBoughtCutAndProved() throws IOException {
		Outcome cut = cut(FILLING, STOCK, null);
		assertTrue(cut.out().startsWith("1 bar for 15.50, proved: no plan costs less"), cut.out());
		assertTrue(cut.out().contains("  4200 mm of ogee: 4 x A 1050 mm; left 0 mm\n"), cut.out());
		assertTrue(cut.err().contains("planning: 1 bar, cost 15.50"), cut.err());
	}

	@Test
	void thousandsOfEqualPiecesArePlannedInTime() throws IOException {
		Outcome cut = cut("label,profile,length,quantity\nA,ogee,700mm,10000\n", STOCK, null, "--format", "json", "--time", "20");
		assertEquals(0, cut.code(), cut.err());
		// six of 700 fill 4200 exactly: 1667 bars would be 25838.50; 1666 bars and 4 pieces in 2400 + 2400 is dearer
		assertEquals("25838.50", cut.json().get("cost").getAsString());
	}

	@Test
	void theSameJobInAnotherOrderGivesTheSamePlan() throws IOException {
		String head = "label,profile,length,quantity\n";
		String one = cut(head + "A,ogee,1000mm,2\nB,ogee,900mm,3\n", STOCK, null, "--format", "json").out();
		assertEquals(one, cut(head + "B,ogee,900mm,3\nA,ogee,1000mm,2\n", STOCK, null, "--format", "json").out());
	}

	@Test
	void aUnitMayBeSaidTwiceIfItIsTheSame() throws IOException {
		JsonObject plan = cut("# units: in\n# Units: IN\nlabel,profile,length,quantity\nA,ogee,40,1\n", STOCK, null, "--format", "json").json();
		assertEquals(List.of("1016"), lengths(plan));
	}

	@Test
	void offcutsAloneAreEnough() throws IOException {
		JsonObject plan = cut(PIECES, "profile,length,price\n", "label,profile,length\nshelf,ogee,4000mm\n", "--format", "json").json();
		assertEquals("0.00", plan.get("cost").getAsString());
		assertEquals(1, plan.getAsJsonArray("bars").size());
	}

	@Test
	void lengthsWithoutAUnitAreMillimetresAndOneNoticeSaysSo() throws IOException {
		String notice = "lengths without a unit are read as mm; if they are inches, write \"# units: in\" before the header or give --units in (";
		String pieces = PIECES.replace("1000mm", "1050");
		String bareStock = STOCK.replace("mm", "");
		Outcome bare = cut(pieces, bareStock, "label,profile,length\nshelf,ogee,500\n", "--format", "json", "--kerf", "3", "--trim", "1/8");
		assertEquals(0, bare.code(), bare.err());
		Outcome named = cut(PIECES.replace("1000mm", "1050mm"), STOCK, "label,profile,length\nshelf,ogee,500mm\n", "--format", "json",
				"--kerf", "3mm", "--trim", "0.125mm");
		assertEquals(named.out(), bare.out());
		assertEquals(1, bare.err().lines().filter(line -> line.startsWith("lengths without")).count(), bare.err());
		String places = bare.err().substring(bare.err().indexOf(notice) + notice.length()).lines().findFirst().orElseThrow();
		assertTrue(places.matches("\\S*p[.]csv, \\S*s[.]csv, \\S*o[.]csv, --kerf, --trim\\)"), bare.err());
		assertFalse(named.err().contains("without a unit"), named.err());
		assertTrue(cut(PIECES, STOCK, null, "--kerf", "3").err().contains(notice + "--kerf)"));
		assertFalse(cut(PIECES, STOCK, null, "--kerf", "0").err().contains(notice));
		// a refused job keeps to its one line
		refused("p.csv, row 2, column length: \"4201\": longer than every length of \"ogee\"; expected at most 4200 mm",
				PIECES.replace("1000mm", "4201"), bareStock);
	}

	@Test
	void aUnitThatIsSaidCountsForBareLengths() throws IOException {
		String bare = PIECES.replace("1000mm", "40");
		Outcome option = cut(bare, STOCK.replace("2400mm", "96").replace("4200mm", "168"), null, "--format", "json", "--units", "in", "--kerf", "1/8");
		assertEquals(List.of("1016", "1016", "1016", "1016"), lengths(option.json()));
		assertEquals("4267.2", option.json().getAsJsonArray("bars").get(0).getAsJsonObject().get("stock").getAsString());
		// 168 - 4 x 40 - 3 x 1/8, and the cut before the leftover
		assertEquals("190.5", option.json().getAsJsonArray("bars").get(0).getAsJsonObject().get("remainder").getAsString());
		assertFalse(option.err().contains("without a unit"), option.err());
		Outcome line = cut("# units: in\n" + bare, "# units: mm\n" + STOCK.replace("mm", ""), null, "--format", "json", "--kerf", "1/8");
		assertEquals(List.of("1016", "1016", "1016", "1016"), lengths(line.json()));
		assertFalse(line.err().contains("without a unit"), line.err());
	}

	@Test
	void controlCharactersAndLineBreaksInNamesStayOutOfTheText() throws IOException {
		String evil = "\"sill\u001b[31m\r\nleft\u009b\"";
		String profile = "\"og\nee\u0007x\"";
		String pieces = "label,profile,length,quantity\n" + evil + ',' + profile + ",1000mm,3\n";
		String stock = "profile,length,price,available\n" + profile + ",1500mm,10,1\n";
		String offcuts = "label,profile,length\n\"she\nlf\"," + profile + ",1100mm\n";
		Outcome text = cut(pieces, stock, offcuts);
		assertEquals(1, text.code(), text.err());
		assertTrue(text.out().contains("\n  1500 mm of og ee x: sill [31m left 1000 mm; left 500 mm\n"), text.out());
		assertTrue(text.out().contains("\n  offcut she lf 1100 mm of og ee x: sill [31m left 1000 mm; left 100 mm\n"), text.out());
		assertTrue(text.out().contains("\n  1 x sill [31m left 1000 mm of og ee x\n"), text.out());
		assertTrue(text.out().chars().noneMatch(c -> Character.isISOControl(c) && c != '\n'), text.out());
		JsonObject bar = cut(pieces, stock, offcuts, "--format", "json").json().getAsJsonArray("bars").get(0).getAsJsonObject();
		assertEquals("sill\u001b[31m\r\nleft\u009b", bar.getAsJsonArray("pieces").get(0).getAsJsonObject().get("label").getAsString());
	}

	private static List<String> lengths(JsonObject plan) {
		return plan.getAsJsonArray("bars").asList().stream()
				.flatMap(bar -> bar.getAsJsonObject().getAsJsonArray("pieces").asList().stream())
				.map(piece -> piece.getAsJsonObject().get("length").getAsString()).toList();
	}

	@Test
	void badRowsAreOneLine() throws IOException {
		refused("p.csv, row 2, column length: \"0mm\": expected a length above zero", PIECES.replace("1000mm", "0mm"), STOCK);
		refused("p.csv, row 2, column length: \"-5mm\": expected a length above zero", PIECES.replace("1000mm", "-5mm"), STOCK);
		refused("p.csv, row 2, column length: \"long\": expected a length", PIECES.replace("1000mm", "long"), STOCK);
		refused("p.csv, row 2, column length: \"\": expected a length", PIECES.replace("1000mm", ""), STOCK);
		refused("p.csv, row 2, column length: \"72 1/3in\"", PIECES.replace("1000mm", "72 1/3in"), STOCK);
		refused("p.csv, row 2, column quantity: \"0\": expected how many pieces, 1 to 100000", PIECES.replace(",4", ",0"), STOCK);
		refused("p.csv, row 2, column quantity: \"2.5\": expected how many pieces", PIECES.replace(",4", ",2.5"), STOCK);
		for (String many : List.of("100001", "999999999", "2147483648", "99999999999")) {
			refused("p.csv, row 2, column quantity: \"" + many + "\": expected how many pieces, 1 to 100000", PIECES.replace(",4", ',' + many),
					STOCK);
		}
		refused("p.csv, row 3, column quantity: \"60000\": expected no more than 100000 pieces in all",
				PIECES.replace(",4", ",60000") + "B,ogee,900mm,60000\n", STOCK);
		refused("p.csv, row 2, column profile: \"\": expected the name of a profile", PIECES.replace("ogee", ""), STOCK);
		refused("p.csv, row 2, column profile: \"bead\": there is no length of it; expected one of the profiles in",
				PIECES.replace("ogee", "bead"), STOCK);
		refused("p.csv, row 2, column length: \"4201mm\": longer than every length of \"ogee\"; expected at most 4200 mm",
				PIECES.replace("1000mm", "4201mm"), STOCK);
		refused("p.csv, row 2, column 5: \"x\": expected no more cells", PIECES.replace(",4", ",4,x"), STOCK);
		refused("s.csv, row 3, column price: \"\": expected the price", PIECES, STOCK.replace("15.50", ""));
		refused("s.csv, row 3, column price: \"-1\": expected the price", PIECES, STOCK.replace("15.50", "-1"));
		refused("s.csv, row 3, column price: \"1e3\": expected the price", PIECES, STOCK.replace("15.50", "1e3"));
		for (String fine : List.of("1.005", "0.001", "15.500")) {
			refused("s.csv, row 3, column price: \"" + fine + "\": expected at most two decimals, such as 12.50", PIECES,
					STOCK.replace("15.50", fine));
		}
		refused("s.csv, row 2, column available: \"-1\": expected how many", PIECES, STOCK.replace(",10,", ",10,-1"));
		refused("s.csv, row 2, column available: \"2147483648\": expected how many there are, 0 to 999999999, or an empty cell", PIECES,
				STOCK.replace(",10,", ",10,2147483648"));
		refused("s.csv, row 2, column available: \"many\": expected how many", PIECES, STOCK.replace(",10,", ",10,many"));
	}

	@Test
	void badFilesAreOneLine() throws IOException {
		refused("p.csv, row 1, column colour: unknown; expected the columns label,profile,length,quantity",
				PIECES.replace("quantity", "quantity,colour"), STOCK);
		refused("p.csv, row 1, column quantity: is missing", PIECES.replace(",quantity", ""), STOCK);
		refused("p.csv, row 1, column label: stands twice", PIECES.replace("quantity", "quantity,label"), STOCK);
		refused("p.csv: has no piece; expected at least one row", "label,profile,length,quantity\n", STOCK);
		refused("s.csv: has no length; expected at least one row under the header", PIECES, "profile,length,price,available\n");
		refused("p.csv, row 1: expected the header label,profile,length,quantity", "", STOCK);
		refused("p.csv, row 2: expected quotes that close", PIECES.replace("A,", "\"A,"), STOCK);
		refused("p.csv, row 3: \"# units: in\": expected before the header", PIECES + "# units: in\n", STOCK);
		refused("p.csv, row 2: \"# units: in\": expected no other unit than that of the line \"# units: mm\" above",
				"# units: mm\n# units: in\n" + PIECES, STOCK);
		refused("s.csv, row 1: \"# units: ell\": expected \"# units: in\" or", PIECES, "# units: ell\n" + STOCK);
		Files.write(folder.resolve("bytes.csv"), new byte[] { (byte) 0xff, (byte) 0xfe, 0 });
		line("bytes.csv: is no text; expected a CSV file in UTF-8", "cut", "--pieces", folder.resolve("bytes.csv").toString(), "--stock",
				write("s.csv", STOCK));
		line("gone.csv: expected a file with the columns label,profile,length,quantity", "cut", "--pieces",
				folder.resolve("gone.csv").toString(), "--stock", write("s.csv", STOCK));
	}

	@Test
	void badOptionsAreOneLine() throws IOException {
		String pieces = write("p.csv", PIECES);
		String stock = write("s.csv", STOCK);
		line("option --time: \"0\": expected seconds above zero", "cut", "--pieces", pieces, "--stock", stock, "--time", "0");
		line("option --time: \"soon\": expected seconds above zero", "cut", "--pieces", pieces, "--stock", stock, "--time", "soon");
		line("option --kerf: \"-3mm\": expected a length of zero or more", "cut", "--pieces", pieces, "--stock", stock, "--kerf=-3mm");
		line("option --trim: \"wide\": expected a length", "cut", "--pieces", pieces, "--stock", stock, "--trim", "wide");
		line("--stock", "cut", "--pieces", pieces);
		line("--home=DIR", "cut");
		line("mutually exclusive", "cut", "--home", "somewhere", "--pieces", pieces, "--stock", stock);
		line("option --accept: \"with --pieces\": expected --home DIR", "cut", "--pieces", pieces, "--stock", stock, "--accept");
	}

	private void refused(String line, String pieces, String stock) throws IOException {
		line(line, "cut", "--pieces", write("p.csv", pieces), "--stock", write("s.csv", stock));
	}

	private void line(String line, String... words) {
		Outcome outcome = run(words);
		assertEquals(2, outcome.code(), outcome.err());
		assertEquals("", outcome.out());
		assertTrue(outcome.err().contains(line), outcome.err());
		assertEquals(1, outcome.err().strip().lines().count(), outcome.err());
	}

	private Outcome cut(String pieces, String stock, String offcuts, String... more) throws IOException {
		List<String> words = new ArrayList<>(List.of("cut", "--pieces", write("p.csv", pieces), "--stock", write("s.csv", stock)));
		if (offcuts != null) {
			words.addAll(List.of("--offcuts", write("o.csv", offcuts)));
		}
		words.addAll(List.of(more));
		Outcome outcome = run(words.toArray(String[]::new));
		assertFalse(outcome.out().isEmpty(), outcome.err());
		return outcome;
	}

	private String write(String name, String text) throws IOException {
		return Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8).toString();
	}
}
