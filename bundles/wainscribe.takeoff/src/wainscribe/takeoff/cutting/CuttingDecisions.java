// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.util.Objects;

import wainscribe.model.Home;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/**
 * How bars are sawn: what the home decides, else common practice.
 *
 * @param kerf           width of the saw cut; 3 mm or 1/8 in, a common blade
 * @param endTrim        what comes off every bar before the first piece; none
 * @param shortestOffcut shortest leftover worth keeping; 300 mm or 12 in
 */
public record CuttingDecisions(Length kerf, Length endTrim, Length shortestOffcut) {

	/** Refuses nulls. */
	public CuttingDecisions {
		Objects.requireNonNull(kerf);
		Objects.requireNonNull(endTrim);
		Objects.requireNonNull(shortestOffcut);
	}

	/** Returns what holds for a home. */
	public static CuttingDecisions of(Home home) {
		CuttingDecisions usual = usual(home.getUnits());
		return new CuttingDecisions(decided(home.getKerf(), usual.kerf), decided(home.getEndTrim(), usual.endTrim),
				decided(home.getShortestOffcut(), usual.shortestOffcut));
	}

	/** Returns common practice. */
	public static CuttingDecisions usual(LengthUnit units) {
		return units == LengthUnit.INCH ? new CuttingDecisions(Length.ofInches(1, 8), Length.ZERO, Length.ofInches(12))
				: new CuttingDecisions(Length.ofMillimetres(3), Length.ZERO, Length.ofMillimetres(300));
	}

	/** A length below zero in a file counts as not decided. */
	private static Length decided(Length length, Length usual) {
		return length == null || length.signum() < 0 ? usual : length;
	}
}
