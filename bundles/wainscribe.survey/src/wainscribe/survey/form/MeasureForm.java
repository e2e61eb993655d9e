// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.math.BigDecimal;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.length.LengthUnit;
import wainscribe.model.measure.Measure;
import wainscribe.model.measure.MeasureUnit;

/** An amount with its unit, within what can be. */
enum MeasureForm implements ValueForm {

	/** A temperature indoors or of a wall. */
	TEMPERATURE(MeasureUnit.Kind.TEMPERATURE, -60, 100, Messages.MeasureForm_Temperature),
	/** A share of a whole. */
	SHARE(MeasureUnit.Kind.SHARE, 0, 100, Messages.MeasureForm_Share),
	/** A flow of air. */
	AIR_FLOW(MeasureUnit.Kind.AIR_FLOW, 0, 10_000, Messages.MeasureForm_AirFlow),
	/** A mass. */
	MASS(MeasureUnit.Kind.MASS, 0, 10_000, Messages.MeasureForm_Mass);

	private final MeasureUnit.Kind kind;
	private final BigDecimal least;
	private final BigDecimal most;
	private final String expected;

	MeasureForm(MeasureUnit.Kind kind, long least, long most, String expected) {
		this.kind = kind;
		this.least = BigDecimal.valueOf(least);
		this.most = BigDecimal.valueOf(most);
		this.expected = expected;
	}

	@Override
	public Measure read(String text, ReadingContext context) throws ValueException {
		Measure measure;
		try {
			measure = Measure.parse(text);
		} catch (IllegalArgumentException e) {
			throw refused();
		}
		if (measure.unit().kind() != kind) {
			throw refused();
		}
		BigDecimal amount = measure.inBaseUnit();
		if (amount.compareTo(least) < 0 || amount.compareTo(most) > 0) {
			throw refused();
		}
		return measure;
	}

	private ValueException refused() {
		return new ValueException(NLS.bind(Messages.MeasureForm_Expected, expected));
	}

	@Override
	public String write(Object value, LengthUnit units) {
		return value.toString();
	}
}
