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
import java.util.List;
import java.util.stream.Stream;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CommandRunTest {

	/** One wall of 60 in without obstructions, published worked example: 3 frames, 3 in gaps give 16 in (wall-frame how-to). */
	private static final String SIXTY = """
			# units: in
			kind,room,wall,name,x,y,width,height,depth,angle,note
			home,,,Test house,,,,,,,built=1985;currency=USD;country=US
			room,Nook,,,,,,96,,,use=living;open=yes
			wall,Nook,A,,,,60,,,,
			brief,Nook,,,,,,,,,"pattern=frames-under-rail;rail=36;rail-face=2 1/2;rail-thick=3/4;gap=3;face=1 1/4;thick=5/8;base=5 1/2;frame-width=15..17"
			""";

	@TempDir
	private Path folder;

	@Test
	void surveyThenLayoutGivesThePublishedWidths() throws IOException {
		Path home = surveyed(SIXTY);
		Outcome layout = run("layout", "--home", home.toString(), "--format", "json");
		assertEquals(0, layout.code(), layout.err());
		JsonObject room = layout.room(0);
		JsonObject run = room.getAsJsonArray("walls").get(0).getAsJsonObject().getAsJsonArray("runs").get(0).getAsJsonObject();
		JsonArray frames = run.getAsJsonArray("frames");
		assertEquals(3, frames.size());
		for (int i = 0; i < 3; i++) {
			assertEquals("406.4", frames.get(i).getAsJsonObject().get("width").getAsString());
			assertEquals(List.of("76.2", "558.8", "1041.4").get(i), frames.get(i).getAsJsonObject().get("x").getAsString());
		}
		assertEquals("76.2", room.get("gap").getAsString());
		assertEquals("914.4", room.getAsJsonObject("rail").get("top").getAsString());
		assertEquals("850.9", room.getAsJsonObject("rail").get("bottom").getAsString());
	}

	@Test
	void surveyReportsInTheContractsWords() throws IOException {
		Path csv = Files.writeString(folder.resolve("s.csv"), SIXTY);
		Outcome survey = run("survey", csv.toString(), "--home", folder.resolve("h").toString(), "--format", "json");
		assertEquals(0, survey.code(), survey.err());
		JsonObject room = survey.room(0);
		assertEquals("Nook", room.get("name").getAsString());
		assertTrue(room.get("closure").isJsonNull());
		assertEquals("1524", room.get("perimeter").getAsString());
		assertEquals(1, room.get("walls").getAsInt());
		assertEquals(0, room.getAsJsonArray("doubtful").size());
	}

	@Test
	void anInfeasibleRequestExitsWithOneAndNamesTheStretch() throws IOException {
		Path home = surveyed(SIXTY + "box,Nook,A,switch,20,35,,,,,gang=1;type=switch\n");
		Outcome layout = run("layout", "--home", home.toString(), "--format", "json");
		assertEquals(1, layout.code(), layout.out());
		JsonObject refused = layout.room(0).getAsJsonArray("infeasible").get(0).getAsJsonObject();
		assertEquals("A", refused.get("wall").getAsString());
		assertTrue(refused.get("reason").getAsString().contains("switch"), refused.toString());
		assertFalse(refused.get("nearest").getAsString().isEmpty());
		assertEquals(3, layout.room(0).getAsJsonObject("objective").get("frames").getAsInt());
	}

	@Test
	void applyKeepsTheOptionsAsDecisions() throws IOException {
		Path home = surveyed(SIXTY);
		assertEquals(0, run("layout", "--home", home.toString(), "--gap", "70mm", "--rail", "34", "--apply").code());
		JsonObject room = run("layout", "--home", home.toString(), "--format", "json").room(0);
		assertEquals("70", room.get("gap").getAsString());
		assertEquals("863.6", room.getAsJsonObject("rail").get("top").getAsString());
	}

	@Test
	void checkExitsWithOneForAnError() throws IOException {
		Path home = surveyed(SIXTY + "box,Nook,A,outlet,20,12,,,,,gang=1;type=receptacle\nframe,Nook,A,,18 1/2,8,20,20,,,\n");
		Outcome check = run("check", "--home", home.toString(), "--format", "json");
		assertEquals(1, check.code(), check.out());
		assertTrue(check.json().getAsJsonArray("findings").asList().stream().map(finding -> finding.getAsJsonObject())
				.anyMatch(finding -> finding.get("rule").getAsString().equals("plate-clear-or-contain")
						&& finding.get("element").getAsString().equals("outlet")
						&& finding.get("wall").getAsString().equals("A")), check.out());
	}

	@Test
	void takeoffWritesTextJsonAndAWorkbook() throws IOException {
		Path home = surveyed(SIXTY);
		Path workbook = folder.resolve("quantities.xlsx");
		Outcome takeoff = run("takeoff", "--home", home.toString(), "--format", "json", "--xlsx", workbook.toString());
		assertEquals(0, takeoff.code(), takeoff.err());
		assertEquals("Nook", takeoff.room(0).get("name").getAsString());
		assertFalse(takeoff.json().getAsJsonArray("lines").isEmpty());
		assertEquals("PK", new String(Files.readAllBytes(workbook), 0, 2, StandardCharsets.US_ASCII));
	}

	@Test
	void packWritesEveryPart() throws IOException {
		Path home = surveyed(SIXTY);
		Path out = folder.resolve("out");
		assertEquals(0, run("pack", "--home", home.toString(), "--out", out.toString()).code());
		try (Stream<Path> files = Files.walk(out)) {
			List<String> names = files.filter(Files::isRegularFile).map(file -> file.getFileName().toString()).toList();
			assertTrue(names.containsAll(List.of("pack.html", "pack.pdf")), names.toString());
			for (String end : List.of(".svg", ".dxf", ".csv", ".xlsx")) {
				assertTrue(names.stream().anyMatch(name -> name.endsWith(end)), names.toString());
			}
		}
	}

	@Test
	void packLeavesOtherFilesAloneAndNamesOneInItsWay() throws IOException {
		Path home = surveyed(SIXTY);
		Path out = Files.createDirectory(folder.resolve("out"));
		Path foreign = Files.writeString(out.resolve("pack.pdf"), "another's");
		Outcome refused = run("pack", "--home", home.toString(), "--out", out.toString());
		assertEquals(2, refused.code());
		assertEquals("", refused.out());
		assertEquals("option --out: \"" + out + "\": " + foreign + " is in the way and not from an earlier pack;"
				+ " expected another folder, or that moved away", refused.err().strip().lines().reduce((a, b) -> b).orElseThrow());
		Files.move(foreign, out.resolve("other.pdf"));
		assertEquals(0, run("pack", "--home", home.toString(), "--out", out.toString()).code());
		assertEquals("another's", Files.readString(out.resolve("other.pdf")));
	}

	@Test
	void badUsageIsOneLineThatNamesOptionValueAndWhatWasExpected() throws IOException {
		Path home = surveyed(SIXTY);
		refused("option --gap: \"wide\": expected a length", "layout", "--home", home.toString(), "--gap", "wide");
		refused("option --rail: \"-3\": expected a length above zero", "layout", "--home", home.toString(), "--rail=-3");
		refused("option --pattern: \"tartan\": expected one of [", "layout", "--home", home.toString(), "--pattern", "tartan");
		refused("option --profile: \"tartan\": expected one of [", "layout", "--home", home.toString(), "--profile", "tartan");
		refused("option --room: \"Attic\": expected one of [\"Nook\"]", "check", "--home", home.toString(), "--room", "Attic");
		refused("Invalid value for option '--units': \"ell\": expected in or mm", "layout", "--home", home.toString(), "--units", "ell");
		refused("Missing required option: '--home=DIR'", "check");
		refused("option --colour: expected one of [--format, --help, --home, --room, --units, --version]", "check", "--home",
				home.toString(), "--colour");
		refused("\"loft\": expected one of [--format, --help, --home,", "survey", "a.csv", "loft", "--home", home.toString());
		refused("command \"measure\": expected one of survey, layout, check, cut, finish, takeoff, pack or --help", "measure");
		refused("Invalid value for option '--out': \"\": expected the name of a file or folder", "pack", "--home", home.toString(),
				"--out", "");
		refused("option --xlsx: \"" + home.resolve("wainscribe.home") + "\": expected a file that ends in .xlsx", "takeoff", "--home",
				home.toString(), "--xlsx", home.resolve("wainscribe.home").toString());
		refused("a command is missing; expected one of survey, layout, check, cut, finish, takeoff, pack or --help");
		refused("holds no home; expected the file wainscribe.home", "check", "--home", folder.toString());
		refused("row 4, column height", "survey", Files.writeString(folder.resolve("bad.csv"), SIXTY.replace(",96,", ",96 1/0,")).toString(),
				"--home", folder.resolve("never").toString());
		assertFalse(Files.exists(folder.resolve("never")));
	}

	@Test
	void everyCommandHasHelp() {
		for (String command : List.of("survey", "layout", "check", "cut", "finish", "takeoff", "pack")) {
			Outcome help = run(command, "--help");
			assertEquals(0, help.code());
			assertTrue(help.out().contains("--format") && help.out().contains("--units"), help.out());
		}
		assertTrue(run("--help").out().contains("takeoff"));
		assertTrue(run("--version").out().startsWith("wainscribe 1.2.3"));
	}

	private void refused(String line, String... words) {
		Outcome outcome = run(words);
		assertEquals(2, outcome.code(), outcome.err());
		assertEquals("", outcome.out());
		assertTrue(outcome.err().contains(line), outcome.err());
		assertEquals(1, outcome.err().strip().lines().count(), outcome.err());
	}

	private Path surveyed(String csv) throws IOException {
		Path home = folder.resolve("home");
		Outcome survey = run("survey", Files.writeString(folder.resolve("survey.csv"), csv).toString(), "--home", home.toString());
		assertEquals(0, survey.code(), survey.err());
		return home;
	}
}
