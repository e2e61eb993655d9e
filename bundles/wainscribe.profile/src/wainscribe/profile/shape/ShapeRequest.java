// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/**
 * An id that asks for a shape in a size: the shape, its face width, an {@code x} and its thickness in millimetres, or in
 * inches with {@code in} behind; then the shape's further number, if it is not the usual one.
 *
 * <pre>
 * ogee-40x15          ogee, 40 mm wide and 15 mm thick
 * ogee-1.25x0.625in   ogee, 1 1/4 in wide and 5/8 in thick
 * reeds-48x12-6       six reeds, 48 mm wide and 12 mm thick
 * </pre>
 *
 * @param shape     id of the shape
 * @param width     face width
 * @param thickness greatest projection
 * @param unit      unit the id is written in
 * @param number    further number; null for the usual one
 */
public record ShapeRequest(String shape, Length width, Length thickness, LengthUnit unit, Integer number) {

	private static final Pattern FORM = Pattern
			.compile("([a-z0-9]+(?:-[a-z0-9]+)*)-(\\d{1,4}(?:\\.\\d{1,6})?)x(\\d{1,4}(?:\\.\\d{1,6})?)(in)?(?:-(\\d{1,3}))?"); //$NON-NLS-1$

	/** Refuses nulls but in the number. */
	public ShapeRequest {
		Objects.requireNonNull(shape);
		Objects.requireNonNull(width);
		Objects.requireNonNull(thickness);
		Objects.requireNonNull(unit);
	}

	/** Reads an id; empty if it is of another form or no whole number of units. */
	public static Optional<ShapeRequest> parse(String id) {
		Matcher form = FORM.matcher(id);
		if (!form.matches()) {
			return Optional.empty();
		}
		LengthUnit unit = form.group(4) == null ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
		Optional<Length> width = length(form.group(2), unit);
		Optional<Length> thickness = length(form.group(3), unit);
		if (width.isEmpty() || thickness.isEmpty()) {
			return Optional.empty();
		}
		Integer number = form.group(5) == null ? null : Integer.valueOf(form.group(5));
		return Optional.of(new ShapeRequest(form.group(1), width.get(), thickness.get(), unit, number));
	}

	private static Optional<Length> length(String text, LengthUnit unit) {
		BigDecimal units = new BigDecimal(text).multiply(BigDecimal.valueOf(unit.units()));
		boolean exact = units.signum() > 0 && units.stripTrailingZeros().scale() <= 0;
		return exact ? Optional.of(new Length(units.longValueExact())) : Optional.empty();
	}

	/** Returns the id that asks for this. */
	public String id() {
		String size = decimal(width) + 'x' + decimal(thickness) + (unit == LengthUnit.INCH ? "in" : ""); //$NON-NLS-1$ //$NON-NLS-2$
		return shape + '-' + size + (number == null ? "" : "-" + number); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** Inches of an id have at most six decimals, in which every whole unit that was read is exact. */
	private String decimal(Length length) {
		return BigDecimal.valueOf(length.units()).divide(BigDecimal.valueOf(unit.units()), 6, RoundingMode.HALF_UP)
				.stripTrailingZeros().toPlainString();
	}

	/** Draws the shape. */
	public ShapeOutcome draw(ProfileShape by) {
		int wanted = number != null ? number : by.parameter().map(ShapeParameter::usual).orElse(0);
		Optional<String> limit = by.parameter().filter(known -> wanted < known.least() || wanted > known.most())
				.map(known -> NLS.bind(Messages.ShapeRequest_OutOfLimits, new Object[] { id(), known.name(), known.least(), known.most() }));
		if (limit.isPresent() || by.parameter().isEmpty() && number != null) {
			return ShapeOutcome.failed(limit.orElseGet(() -> NLS.bind(Messages.ShapeRequest_NoNumber, id())));
		}
		return ShapeOutcome.of(this, by, new ShapeSize(width, thickness, wanted));
	}

	/** Returns the name of a profile with its size in the unit of the id. */
	String nameOf(ProfileShape by) {
		return NLS.bind(Messages.ShapeRequest_NameWithSize,
				new Object[] { by.name(), LengthFormat.asShown(width, unit), LengthFormat.asShown(thickness, unit) });
	}
}
