// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

/**
 * A piece on a bar.
 *
 * @param label   its label
 * @param room    name of its room
 * @param length  from long point to long point, rounded once
 * @param start   left or lower end
 * @param end     right or upper end
 * @param profile what it is cut from
 * @param where   where it goes
 * @param notes   what else to know
 * @param share   its part of the longest bar, 0 to 1
 * @param percent its part of its own bar, for style sheets
 */
public record CutView(String label, String room, String length, String start, String end, String profile, String where, String notes,
		double share, String percent) {
}
