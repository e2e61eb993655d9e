// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.cli.Outcome.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cutting plans of a home. */
class CutHomeTest {

	private static final String SURVEY = """
			# units: in
			kind,room,wall,name,x,y,width,height,depth,angle,note
			home,,,Test house,,,,,,,built=1985;currency=USD;country=US
			room,Nook,,,,,,96,,,use=living;open=yes
			wall,Nook,A,,,,60,,,,
			brief,Nook,,,,,,,,,"pattern=frames-under-rail;rail=36;rail-face=2 1/2;rail-thick=3/4;gap=3;face=1 1/4;thick=5/8;base=5 1/2;frame-width=15..17;material=poplar;stock=96|144"
			""";
	private static final String PRICES = """
			item,unit,pack,pack-length,price
			"frame 1 1/4"" x 5/8\""",length,,96,7.00
			"frame 1 1/4"" x 5/8\""",length,,144,10.00
			"rail 2 1/2"" x 3/4\""",length,,96,9.00
			"base 5 1/2"" x 9/16\""",length,,96,12.00
			""";

	@TempDir
	private Path folder;

	private String home;

	@BeforeEach
	void survey() throws IOException {
		home = folder.resolve("home").toString();
		assertEquals(0, run("survey", Files.writeString(folder.resolve("survey.csv"), SURVEY).toString(), "--home", home).code());
	}

	private void price(String list) throws IOException {
		Outcome outcome = run("takeoff", "--home", home, "--prices", Files.writeString(folder.resolve("prices.csv"), list).toString());
		assertEquals(0, outcome.code(), outcome.err());
	}

	@Test
	void everyPieceOfTheCutListIsOnOneBar() throws IOException {
		price(PRICES);
		Outcome cut = run("cut", "--home", home, "--format", "json");
		assertEquals(0, cut.code(), cut.err());
		List<String> wanted = cut.array("pieces").stream().map(piece -> piece.get("label").getAsString()).sorted().toList();
		List<String> placed = cut.array("bars").stream().flatMap(bar -> bar.getAsJsonArray("pieces").asList().stream())
				.map(piece -> piece.getAsJsonObject().get("label").getAsString()).sorted().toList();
		assertTrue(wanted.size() >= 14, wanted.toString());
		assertEquals(wanted, placed);
		assertEquals("3.175", cut.json().get("kerf").getAsString());
		assertEquals("304.8", cut.json().get("shortestOffcut").getAsString());
		assertTrue(cut.array("bars").stream().allMatch(bar -> bar.get("material").getAsString().equals("poplar")));
	}

	@Test
	void theTakeoffBuysWhatThePlanSays() throws IOException {
		price(PRICES);
		Outcome cut = run("cut", "--home", home, "--format", "json");
		long bars = cut.array("bars").stream().filter(bar -> bar.get("profile").getAsString().startsWith("frame")).count();
		Outcome takeoff = run("takeoff", "--home", home, "--format", "json");
		long packs = takeoff.array("lines").stream().filter(line -> line.get("key").getAsString().startsWith("frame"))
				.filter(line -> !line.get("item").getAsString().startsWith("Spare"))
				.flatMap(line -> line.getAsJsonArray("packs").asList().stream())
				.mapToLong(pack -> pack.getAsJsonObject().get("count").getAsLong()).sum();
		assertEquals(bars, packs);
	}

	@Test
	void withoutAPriceThePlanGoesByLengthAndSaysSo() {
		Outcome cut = run("cut", "--home", home);
		assertEquals(0, cut.code(), cut.err());
		assertTrue(cut.out().contains("No price for every length of frame 1 1/4\" x 5/8\", poplar: planned by length"), cut.out());
		assertEquals("0.00", run("cut", "--home", home, "--format", "json").json().get("cost").getAsString());
	}

	@Test
	void acceptingKeepsLeftoversAsOffcutsAndNothingIsLeftToCut() throws IOException {
		price(PRICES);
		JsonObject plan = run("cut", "--home", home, "--format", "json", "--accept").json();
		assertFalse(plan.getAsJsonArray("offcuts").isEmpty());
		for (JsonElement offcut : plan.getAsJsonArray("offcuts")) {
			assertTrue(offcut.getAsJsonObject().get("length").getAsBigDecimal().doubleValue() >= 304.8, offcut.toString());
		}
		JsonObject next = run("cut", "--home", home, "--format", "json").json();
		assertTrue(next.getAsJsonArray("bars").isEmpty());
		assertEquals(plan.getAsJsonArray("bars").size(), next.getAsJsonArray("accepted").size());
		assertEquals("0.00", next.get("cost").getAsString());
		assertEquals(plan.getAsJsonArray("offcuts"), next.getAsJsonArray("offcuts"));
	}

	@Test
	void aSideLongerThanEveryLengthIsMissing() throws IOException {
		home = folder.resolve("other").toString();
		run("survey", Files.writeString(folder.resolve("other.csv"), SURVEY.replace(";stock=96|144", "")).toString(), "--home", home);
		price(PRICES.replace("144,10.00", "15,1.00").replace("96,7.00", "14,1.00"));
		Outcome cut = run("cut", "--home", home);
		assertEquals(1, cut.code(), cut.out());
		assertTrue(cut.out().contains("Missing: no length is known that holds\n  Nook A-L1/left 1' 10\""), cut.out());
		assertEquals(1, run("cut", "--home", home, "--accept").code());
		assertTrue(run("cut", "--home", home, "--format", "json").json().getAsJsonArray("accepted").isEmpty());
	}

	@Test
	void aCutListOfAPackIsTakenAsPieces() throws IOException {
		Path pack = folder.resolve("pack");
		assertEquals(0, run("pack", "--home", home, "--out", pack.toString()).code());
		String stock = "profile,length,price,available\n\"frame 1 1/4\"\" x 5/8\"\"\",96in,7,\n\"rail 2 1/2\"\" x 3/4\"\"\",96in,9,\n"
				+ "\"base 5 1/2\"\" x 9/16\"\"\",96in,12,\n";
		Outcome cut = run("cut", "--pieces", pack.resolve("pieces.csv").toString(), "--stock",
				Files.writeString(folder.resolve("s.csv"), stock).toString(), "--format", "json");
		assertEquals(0, cut.code(), cut.err());
	}
}
