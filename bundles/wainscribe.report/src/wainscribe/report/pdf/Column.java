// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

/**
 * A column of a printed table.
 *
 * @param title its heading
 * @param share of the width, relative to the other columns
 * @param right whether its text stands at the right
 */
record Column(String title, double share, boolean right) {

	static Column left(String title, double share) {
		return new Column(title, share, false);
	}

	static Column right(String title, double share) {
		return new Column(title, share, true);
	}
}
