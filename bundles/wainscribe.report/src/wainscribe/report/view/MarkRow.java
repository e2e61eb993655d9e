// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

/**
 * Marks of one frame, all from the wall's datum: its left end and the finished floor there; each rounded once.
 *
 * @param frame  id of the frame
 * @param left   left edge
 * @param right  right edge
 * @param bottom lower edge at the left
 * @param top    upper edge at the left
 * @param width  outside width
 * @param height outside height at the left
 * @param slope  how far the lower edge climbs to the right; empty when level
 */
public record MarkRow(String frame, String left, String right, String bottom, String top, String width, String height,
		String slope) {
}
