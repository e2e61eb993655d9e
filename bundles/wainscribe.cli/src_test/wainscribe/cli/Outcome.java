// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

import wainscribe.report.DesignServices;

/** What a command line came to. */
record Outcome(int code, String out, String err) {

	private static final DesignServices SERVICES = DesignServices.builtIn();

	/** Runs a command line with what comes with the suite; an error of the program itself fails the test. */
	static Outcome run(String... words) {
		StringWriter out = new StringWriter();
		StringWriter err = new StringWriter();
		List<Throwable> failures = new ArrayList<>();
		int code = new CommandRun(SERVICES, "1.2.3", new Console(new PrintWriter(out, true), new PrintWriter(err, true)), failures::add).run(words);
		assertEquals(List.of(), failures);
		return new Outcome(code, out.toString(), err.toString());
	}

	JsonObject json() {
		return JsonParser.parseString(out).getAsJsonObject();
	}

	List<JsonObject> array(String name) {
		return json().getAsJsonArray(name).asList().stream().map(JsonElement::getAsJsonObject).toList();
	}

	JsonObject room(int index) {
		return array("rooms").get(index);
	}
}
