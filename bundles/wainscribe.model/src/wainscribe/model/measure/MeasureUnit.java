// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/** Units of the other things a survey records, as they are written on labels. */
public enum MeasureUnit {

	/** Degrees Celsius. */
	CELSIUS("C", Kind.TEMPERATURE, "1"), //$NON-NLS-1$ //$NON-NLS-2$
	/** Degrees Fahrenheit. */
	FAHRENHEIT("F", Kind.TEMPERATURE, null), //$NON-NLS-1$
	/** Per cent. */
	PERCENT("%", Kind.SHARE, "1"), //$NON-NLS-1$ //$NON-NLS-2$
	/** Cubic feet a minute; 0.4719474432 L/s, exact (NIST SP 811). */
	CUBIC_FEET_PER_MINUTE("cfm", Kind.AIR_FLOW, "0.4719474432"), //$NON-NLS-1$ //$NON-NLS-2$
	/** Litres a second. */
	LITRES_PER_SECOND("l/s", Kind.AIR_FLOW, "1"), //$NON-NLS-1$ //$NON-NLS-2$
	/** Cubic metres an hour. */
	CUBIC_METRES_PER_HOUR("m3/h", Kind.AIR_FLOW, null), //$NON-NLS-1$
	/** Kilograms. */
	KILOGRAM("kg", Kind.MASS, "1"), //$NON-NLS-1$ //$NON-NLS-2$
	/** Pounds; 0.45359237 kg, exact (NIST SP 811). */
	POUND("lb", Kind.MASS, "0.45359237"); //$NON-NLS-1$ //$NON-NLS-2$

	/** What is measured; within a kind amounts can be converted. */
	public enum Kind {
		/** In degrees Celsius. */
		TEMPERATURE,
		/** In per cent. */
		SHARE,
		/** In litres a second. */
		AIR_FLOW,
		/** In kilograms. */
		MASS
	}

	private final String symbol;
	private final Kind kind;
	private final BigDecimal factor;

	MeasureUnit(String symbol, Kind kind, String factor) {
		this.symbol = symbol;
		this.kind = kind;
		this.factor = factor == null ? null : new BigDecimal(factor);
	}

	/** Returns the symbol written behind the number. */
	public String symbol() {
		return symbol;
	}

	/** Returns what is measured. */
	public Kind kind() {
		return kind;
	}

	/** Converts an amount of this unit to the base unit of its {@link Kind}. */
	public BigDecimal toBase(BigDecimal amount) {
		return switch (this) {
			case FAHRENHEIT -> amount.subtract(BigDecimal.valueOf(32)).multiply(BigDecimal.valueOf(5))
					.divide(BigDecimal.valueOf(9), MathContext.DECIMAL64);
			case CUBIC_METRES_PER_HOUR -> amount.divide(new BigDecimal("3.6"), MathContext.DECIMAL64); //$NON-NLS-1$
			default -> amount.multiply(factor);
		};
	}

	/** Finds a unit by its symbol, whatever the case. */
	public static Optional<MeasureUnit> ofSymbol(String symbol) {
		for (MeasureUnit unit : values()) {
			if (unit.symbol.equalsIgnoreCase(symbol)) {
				return Optional.of(unit);
			}
		}
		return Optional.empty();
	}
}
