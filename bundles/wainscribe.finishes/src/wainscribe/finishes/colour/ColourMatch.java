// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

/**
 * A colour of a list and its distance from the one looked for.
 *
 * @param index its place in the list
 * @param difference CIEDE2000
 */
public record ColourMatch(int index, double difference) {
}
