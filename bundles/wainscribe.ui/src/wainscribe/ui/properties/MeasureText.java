// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.measure.Measure;
import wainscribe.model.measure.MeasureUnit;

/** Amounts of one kind with their unit, such as 20C or 80cfm. */
final class MeasureText implements ValueText<Measure> {

	private final MeasureUnit.Kind kind;

	MeasureText(MeasureUnit.Kind kind) {
		this.kind = kind;
	}

	@Override
	public String shown(Measure value) {
		String space = value.unit() == MeasureUnit.PERCENT ? "" : " "; //$NON-NLS-1$ //$NON-NLS-2$
		String degree = value.unit().kind() == MeasureUnit.Kind.TEMPERATURE ? "°" : ""; //$NON-NLS-1$ //$NON-NLS-2$
		return value.amount().toPlainString() + space + degree + value.unit().symbol();
	}

	@Override
	public Measure read(String text) {
		Measure measure = Measure.parse(text);
		if (measure.unit().kind() != kind) {
			throw new IllegalArgumentException(NLS.bind(Messages.MeasureText_Expected, text, example()));
		}
		return measure;
	}

	private String example() {
		return switch (kind) {
			case TEMPERATURE -> Messages.MeasureText_Temperature;
			case SHARE -> Messages.MeasureText_Share;
			case AIR_FLOW -> Messages.MeasureText_AirFlow;
			case MASS -> Messages.MeasureText_Mass;
		};
	}
}
