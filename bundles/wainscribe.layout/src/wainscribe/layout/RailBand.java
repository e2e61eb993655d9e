// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

import wainscribe.model.length.Length;

/**
 * The rail that runs round a room.
 *
 * @param bottom    its underside, from the finished floor
 * @param top       its upper edge
 * @param thickness its projection
 */
public record RailBand(Length bottom, Length top, Length thickness) {
}
