// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.Optional;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/**
 * Size of the cover plate of an electrical box.
 *
 * @param width  of the plate
 * @param height of the plate
 */
public record PlateSize(Length width, Length height) {

	private static final Length US_WIDTH = Length.ofMillimetres(70);
	private static final Length US_HEIGHT = Length.ofMillimetres(114);
	private static final Length US_GANG = Length.ofMillimetres(46);
	private static final Length UK_SIDE = Length.ofMillimetres(86);
	private static final Length UK_TWO_GANG = Length.ofMillimetres(146);

	/**
	 * Returns the usual plate: 70 x 114 mm and 46 mm for each further gang in North America, 86 x 86 mm and 146 x 86 mm for
	 * two gangs in the British Isles. Common practice; BS 4662 has the British sizes.
	 *
	 * @param country two letters, null if not recorded
	 * @param units   unit of the survey, which decides where the country does not; may be null
	 * @param gangs   1 or more
	 * @return empty if there is no usual plate
	 */
	public static Optional<PlateSize> usual(String country, LengthUnit units, int gangs) {
		if (isBritish(country, units)) {
			return gangs > 2 ? Optional.empty() : Optional.of(new PlateSize(gangs == 2 ? UK_TWO_GANG : UK_SIDE, UK_SIDE));
		}
		return Optional.of(new PlateSize(US_WIDTH.plus(US_GANG.times(gangs - 1L)), US_HEIGHT));
	}

	/** Tells whether the usual plates of a country are known. */
	public static boolean isKnown(String country) {
		return country != null && switch (country) {
			case "US", "CA", "UK", "GB", "IE" -> true; //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$
			default -> false;
		};
	}

	private static boolean isBritish(String country, LengthUnit units) {
		return isKnown(country) ? !"US".equals(country) && !"CA".equals(country) : units == LengthUnit.MILLIMETRE; //$NON-NLS-1$ //$NON-NLS-2$
	}
}
