// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks;

import java.util.Locale;

/** Writes the table of results. */
public final class Report {

	private Report() {
	}

	/** Writes the heading of a part. */
	public static void heading(String text) {
		System.out.println();
		System.out.println(text);
	}

	/** Writes what was measured. */
	public static void line(String what, String format, Object... values) {
		System.out.printf(Locale.ROOT, "  %-68s %s%n", what, String.format(Locale.ROOT, format, values));
	}

	/** Writes a figure that has to be reached. */
	public static void figure(String what, String format, double value, String wanted, boolean reached) {
		line(what, format + "   (wanted: %s)  %s", value, wanted, reached ? "reached" : "NOT REACHED");
	}
}
