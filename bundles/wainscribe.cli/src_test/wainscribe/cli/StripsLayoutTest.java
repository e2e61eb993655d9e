// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import wainscribe.report.DesignServices;

/** The command {@code layout} with strips, and with rails and gaps that cannot be. */
class StripsLayoutTest {

	private static final DesignServices SERVICES = DesignServices.builtIn();

	@TempDir
	private Path folder;

	private String said = "";
	private String progress = "";

	@Test
	void aSurveyMayNameEveryPatternThatIsThere() throws IOException {
		for (String pattern : SERVICES.patterns().ids()) {
			assertEquals(0, run("layout", "--home", home(pattern, "").toString()), pattern + ": " + progress);
			assertTrue(said.contains(pattern), said);
		}
	}

	@Test
	void stripsAreWrittenWithTheirKind() throws IOException {
		Path home = home("battens-under-rail", "");
		assertEquals(0, run("layout", "--home", home.toString(), "--format", "json"));
		JsonObject run = json().getAsJsonArray("walls").get(0).getAsJsonObject().getAsJsonArray("runs").get(0).getAsJsonObject();
		assertEquals(0, run.getAsJsonArray("frames").size());
		JsonObject strip = run.getAsJsonArray("strips").get(1).getAsJsonObject();
		assertEquals("{\"id\":\"A-L2\",\"x\":904,\"y\":140,\"width\":64,\"height\":700,\"kind\":\"batten\"}", strip.toString());
		run("layout", "--home", home.toString());
		assertTrue(said.contains("fields 420 mm") && said.contains("5 battens of 64 mm x 700 mm"), said);
	}

	@Test
	void framesAreWrittenAsBefore() throws IOException {
		run("layout", "--home", home("frames-under-rail", "").toString(), "--format", "json");
		JsonObject run = json().getAsJsonArray("walls").get(0).getAsJsonObject().getAsJsonArray("runs").get(0).getAsJsonObject();
		assertEquals("[tier, x0, x1, y0, y1, frames, reason]", run.keySet().toString());
	}

	@Test
	void aGapWiderThanTheRoomIsRefusedAndNotKept() throws IOException {
		Path home = home("frames-under-rail", "");
		assertEquals(1, run("layout", "--home", home.toString(), "--gap", "5m", "--apply"));
		assertTrue(said.contains("No frame fits at a gap of 5000 mm. The largest gap that leaves room for one is 250 mm."), said);
		assertTrue(progress.contains("not kept"), progress);
		assertEquals(0, run("layout", "--home", home.toString()));
	}

	@Test
	void aRailAboveTheCeilingIsRefusedAndNotKept() throws IOException {
		Path home = home("frames-under-rail", "");
		assertEquals(1, run("layout", "--home", home.toString(), "--units", "in", "--rail", "300", "--apply"));
		assertTrue(said.contains("is above the ceiling at"), said);
		assertTrue(!said.contains("would do"), said);
		assertEquals(0, run("layout", "--home", home.toString()));
	}

	@Test
	void aRailInTheBaseIsRefusedAndNotKept() throws IOException {
		Path home = home("boards-and-rails", "");
		assertEquals(1, run("layout", "--home", home.toString(), "--units", "in", "--rail", "2", "--apply"));
		assertTrue(said.contains("lies in the base"), said);
		assertEquals(0, run("layout", "--home", home.toString()));
	}

	private Path home(String pattern, String more) throws IOException {
		Path csv = Files.writeString(folder.resolve("s.csv"), "# units: mm\nkind,room,wall,name,x,y,width,height,depth,angle,note\n"
				+ "room,Hall,,,,,,2400,,,use=hall;open=yes\nwall,Hall,A,,,,2840,,,,\n" + "brief,Hall,,,,,,,,,pattern=" + pattern
				+ ";rail=900\n" + more);
		Path home = folder.resolve(pattern);
		assertEquals(0, run("survey", csv.toString(), "--home", home.toString()), progress);
		return home;
	}

	private JsonObject json() {
		return JsonParser.parseString(said).getAsJsonObject().getAsJsonArray("rooms").get(0).getAsJsonObject();
	}

	private int run(String... words) {
		StringWriter out = new StringWriter();
		StringWriter err = new StringWriter();
		Console console = new Console(new PrintWriter(out, true), new PrintWriter(err, true));
		int code = new CommandRun(SERVICES, "0.1.0", console, failure -> {
			throw new AssertionError(failure);
		}).run(words);
		said = out.toString();
		progress = err.toString();
		return code;
	}
}
