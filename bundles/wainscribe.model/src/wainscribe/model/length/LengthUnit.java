// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.length;

/** A unit in which a home is measured and drawn. */
public enum LengthUnit {

	/** Feet and inches, marks of 1/16 in on the tape. */
	INCH("in", Length.UNITS_PER_INCH, new Length(4 * Length.UNITS_PER_SIXTY_FOURTH)), //$NON-NLS-1$
	/** Millimetres, marks of 1 mm on the tape. */
	MILLIMETRE("mm", Length.UNITS_PER_MILLIMETRE, new Length(Length.UNITS_PER_MILLIMETRE)); //$NON-NLS-1$

	private final String symbol;
	private final long units;
	private final Length tapeMark;

	LengthUnit(String symbol, long units, Length tapeMark) {
		this.symbol = symbol;
		this.units = units;
		this.tapeMark = tapeMark;
	}

	/** Returns the symbol used in files and on the command line: {@code in} or {@code mm}. */
	public String symbol() {
		return symbol;
	}

	/** Returns how many units of 1/8000 mm make one of this. */
	public long units() {
		return units;
	}

	/** Returns the distance between the marks of a tape in this unit: 1/16 in or 1 mm. */
	public Length tapeMark() {
		return tapeMark;
	}

	/**
	 * Finds a unit by its symbol.
	 *
	 * @throws IllegalArgumentException if the symbol is neither {@code in} nor {@code mm}
	 */
	public static LengthUnit ofSymbol(String symbol) {
		for (LengthUnit unit : values()) {
			if (unit.symbol.equals(symbol)) {
				return unit;
			}
		}
		throw new IllegalArgumentException("unit \"" + symbol + "\": expected in or mm"); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
