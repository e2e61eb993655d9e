// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

/**
 * Where a band lies under or over an opening: what it is a part of, and how strips end at its own ends. Elsewhere in it, at
 * fixtures, they end as in every run.
 *
 * @param bottom     lower edge of the whole tier
 * @param top        upper edge of the whole tier
 * @param boardLeft  whether a strip stands at its left end
 * @param boardRight whether a strip stands at its right end
 */
public record BandPart(Line bottom, Line top, boolean boardLeft, boolean boardRight) {
}
