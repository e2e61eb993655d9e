// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.solver;

/**
 * Something on the wall that does not cut a run but that strips keep off.
 *
 * @param outline what it covers
 * @param margin  least distance of a strip; zero: it may not be touched
 * @param warning distance under which a strip is near, zero for none
 * @param element number of the surveyed element on the wall
 */
public record Island(Box outline, long margin, long warning, int element) {

	/** Returns the greatest distance at which a strip matters. */
	public long reach() {
		return Math.max(1, Math.max(margin, warning));
	}
}
