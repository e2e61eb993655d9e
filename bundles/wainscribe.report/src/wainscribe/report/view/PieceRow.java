// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

/**
 * Pieces that are cut alike.
 *
 * @param count     how many
 * @param longPoint length from long point to long point, rounded once
 * @param profile   what they are cut from
 * @param start     left or lower end
 * @param end       right or upper end
 * @param labels    their names, those of frames put together
 * @param notes     what else to know
 */
public record PieceRow(int count, String longPoint, String profile, String start, String end, String labels, String notes) {
}
