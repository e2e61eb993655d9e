// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks;

import java.util.Locale;

/** Writes the table of results. */
final class Report {

	private Report() {
	}

	static void heading(String text) {
		System.out.println();
		System.out.println(text);
	}

	/** Writes what was measured. */
	static void line(String what, String format, Object... values) {
		System.out.printf(Locale.ROOT, "  %-68s %s%n", what, String.format(Locale.ROOT, format, values));
	}

	/** Writes a figure that has to be reached. */
	static void figure(String what, String format, double value, String wanted, boolean reached) {
		line(what, format + "   (wanted: %s)  %s", value, wanted, reached ? "reached" : "NOT REACHED");
	}
}
