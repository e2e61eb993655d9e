// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.cli.Outcome.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FinishCommandTest {

	private static final String WASH_ROOM = """
			# units: mm
			kind,room,wall,name,x,y,width,height,depth,angle,note
			home,,,Old dairy,,,,,,,built=1926;country=US
			room,Wash room,,,,,,2400,,,use=bath-with-shower;air=20C;rh=60%;surface=14C
			wall,Wash room,A,,,,3000,,,,
			wall,Wash room,B,,,,2000,,,,
			wall,Wash room,C,,,,3000,,,,
			wall,Wash room,D,,,,2000,,,,
			finish,Wash room,,old gloss,,,,,,,surface=walls;gloss=G6;binder=alkyd;substrate=plaster;sound=yes;disturb=yes
			brief,Wash room,,,,,,,,,pattern=none
			paint,Wash room,,sage,,,,,,,surface=walls;colour=#8a9a94;gloss=G1;binder=acrylic;coats=2
			paint,Wash room,,woodwork,,,,,,,surface=trim;gloss=G4;binder=alkyd;mildew=yes;coats=2
			""";

	@TempDir
	private Path folder;

	/** Sharma, Wu, Dalal 2005, Table 1, pair 25 (doi 10.1002/col.20070). */
	@Test
	void aPublishedPairOfColours() {
		JsonObject colour = json("finish", "--colour", "lab:60.2574,-34.0099,36.2677", "--against", "lab:60.4626,-34.1751,39.4387", "--format", "json");
		assertEquals(1.2644, colour.get("deltaE00").getAsDouble(), 0.0001);
		assertEquals(60.2574, colour.getAsJsonArray("lab").get(0).getAsDouble(), 1e-9);
	}

	/** W3C WCAG 2.1: black on white is 21 : 1. */
	@Test
	void blackOnWhite() {
		JsonObject colour = json("finish", "--colour", "#000000", "--against", "#FFFFFF", "--light", "a", "--format", "json");
		assertEquals(21, colour.get("contrast").getAsDouble(), 1e-4);
		assertEquals(0, colour.get("lrv").getAsDouble(), 1e-9);
		assertEquals("A", colour.getAsJsonObject("seen").get("light").getAsString());
	}

	@Test
	void oneColourHasNoDifference() {
		JsonObject colour = json("finish", "--colour", "#8a9a94", "--format", "json");
		assertTrue(colour.get("deltaE00").isJsonNull() && colour.get("contrast").isJsonNull());
		JsonArray lch = colour.getAsJsonArray("lch");
		JsonArray lab = colour.getAsJsonArray("lab");
		assertEquals(Math.hypot(lab.get(1).getAsDouble(), lab.get(2).getAsDouble()), lch.get(1).getAsDouble(), 1e-3);
	}

	@Test
	void aScheduleSaysWhatSpeaksAgainstAPaint() throws IOException {
		Path csv = Files.writeString(folder.resolve("room.csv"), WASH_ROOM);
		Path home = folder.resolve("home");
		assertEquals(0, run("survey", csv.toString(), "--home", home.toString()).code());
		JsonObject room = json("finish", "--home", home.toString(), "--format", "json").getAsJsonArray("rooms").get(0).getAsJsonObject();
		// 20 degrees at 60 %: dew point 12.0 degrees (Hyland, Wexler 1983)
		assertEquals(12.0, room.getAsJsonObject("air").get("dewPoint").getAsDouble(), 0.05);
		JsonArray zones = room.getAsJsonArray("zones");
		assertEquals(5, zones.size());
		JsonObject zone = zones.get(0).getAsJsonObject();
		assertEquals("A", zone.get("wall").getAsString());
		assertEquals(7.2, zone.get("area").getAsDouble(), 1e-9);
		assertEquals(1.6, zone.get("litres").getAsDouble(), 1e-3);
		assertEquals(4, zone.getAsJsonArray("unsuited").size(), () -> zone.toString());
		assertTrue(zone.getAsJsonArray("preparation").get(0).getAsString().contains("1926"));
		assertTrue(run("finish", "--home", home.toString()).out().contains("does not suit"));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "--colour;#12|option --colour: \"#12\": expected #rrggbb", "--colour;lab:120,0,0|option --colour",
			"--colour;lab:NaN,0,0|option --colour", "--colour;#123456;--against;red|option --against", "--colour;#123456;--light;X9|option --light",
			"--against;#123456|--colour", "--format;json|--home" })
	void badInputIsOneLine(String words, String message) {
		Outcome outcome = run(("finish;" + words).split(";"));
		assertEquals(2, outcome.code());
		assertTrue(outcome.err().contains(message), outcome.err());
		assertEquals(1, outcome.err().lines().count(), outcome.err());
		assertEquals("", outcome.out());
	}

	private JsonObject json(String... words) {
		Outcome outcome = run(words);
		assertEquals(0, outcome.code(), outcome.err());
		return JsonParser.parseString(outcome.out()).getAsJsonObject();
	}
}
