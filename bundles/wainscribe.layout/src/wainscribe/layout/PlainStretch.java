// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/**
 * A frameable stretch that could not take a frame as asked.
 *
 * @param wall    the wall
 * @param x0      left end
 * @param x1      right end
 * @param tier    the tier
 * @param reason  one sentence that names what bars it
 * @param nearest the nearest request that would do, as a sentence; empty if none was found
 */
public record PlainStretch(Wall wall, Length x0, Length x1, Tier tier, String reason, String nearest) {
}
