// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.io.PrintWriter;
import java.util.Objects;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonObject;

import wainscribe.cli.text.SingleLine;

/**
 * Where a command writes: results to standard output, progress to standard error.
 *
 * @param out results
 * @param err progress and the one line about bad input
 */
record Console(PrintWriter out, PrintWriter err) {

	private static final Gson GSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().serializeNulls().create();

	Console {
		Objects.requireNonNull(out);
		Objects.requireNonNull(err);
	}

	/** Writes a result for scripts. */
	void json(JsonObject result) {
		out.println(GSON.toJson(result));
		out.flush();
	}

	/** Writes a result for people. */
	void text(String result) {
		out.print(SingleLine.eachOf(result));
		out.flush();
	}

	/** Says what is being done. */
	void progress(String step) {
		err.println(SingleLine.of(step));
		err.flush();
	}
}
