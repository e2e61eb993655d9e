// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

/**
 * How plain strips fill the bands of a pattern.
 * <p>
 * Strips of a stretch stand at one pitch: the clear fields between them are equal. With boards at the ends a strip stands
 * against every corner, casing and fixture; without, a field lies there. From two rows on, level strips part the band into
 * rows of equal height and run through the whole room.
 *
 * @param boardsAtEnds whether a strip stands at both ends of a stretch
 * @param fewestRows   least number of rows of fields; 1 for upright strips alone
 * @param mostRows     greatest number of rows
 */
public record StripRhythm(boolean boardsAtEnds, int fewestRows, int mostRows) {

	private static final int MOST = 8;

	/**
	 * Refuses numbers of rows that are none.
	 *
	 * @throws IllegalArgumentException unless 1 &lt;= {@code fewestRows} &lt;= {@code mostRows} &lt;= 8
	 */
	public StripRhythm {
		if (fewestRows < 1 || mostRows < fewestRows || mostRows > MOST) {
			throw new IllegalArgumentException("rows " + fewestRows + " to " + mostRows + ": expected 1 to " + MOST); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
	}
}
