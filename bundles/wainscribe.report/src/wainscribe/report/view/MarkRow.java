// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

/**
 * Marks of one frame or strip, all from the wall's datum: its left end and the finished floor there; each rounded once. On a slope
 * heights are told at the left and at the right.
 *
 * @param frame  id of the frame or strip
 * @param left   left edge
 * @param right  right edge
 * @param bottom lower edge
 * @param top    upper edge
 * @param cut    width to which all frames of the run are cut
 * @param gap    gap that is left then
 */
public record MarkRow(String frame, String left, String right, String bottom, String top, String cut, String gap) {
}
