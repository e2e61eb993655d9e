// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

/**
 * One piece to cut.
 *
 * @param label      name on the drawing
 * @param profile    what it is cut from
 * @param longPoint  length from long point to long point
 * @param start      left or lower end
 * @param end        right or upper end
 * @param where      where it goes
 * @param notes      what else to know
 */
public record PieceRow(String label, String profile, String longPoint, String start, String end, String where,
		String notes) {
}
