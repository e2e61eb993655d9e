// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

/**
 * A frame under or over an opening that reaches into a tier.
 *
 * @param over    above the opening, else below it
 * @param bottom  lower edge of what it stands in
 * @param top     upper edge of what it stands in
 * @param frame   the frame
 * @param legal   whether it may be; if not it is given up
 * @param near    its near distances
 * @param element number of the (first) opening
 */
public record Bay(boolean over, Line bottom, Line top, Quad frame, boolean legal, int near, int element) {
}
