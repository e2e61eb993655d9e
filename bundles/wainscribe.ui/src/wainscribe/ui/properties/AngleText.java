// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.math.BigDecimal;

import org.eclipse.osgi.util.NLS;

/** Angles between two walls, in degrees above 0 and under 360. */
final class AngleText implements ValueText<BigDecimal> {

	private static final BigDecimal FULL_TURN = BigDecimal.valueOf(360);

	@Override
	public String shown(BigDecimal value) {
		return value.toPlainString() + '°';
	}

	@Override
	public BigDecimal read(String text) {
		BigDecimal angle;
		try {
			angle = new BigDecimal(text.strip().replaceFirst("\\s*°$", "")); //$NON-NLS-1$ //$NON-NLS-2$
		} catch (NumberFormatException e) {
			throw new IllegalArgumentException(NLS.bind(Messages.AngleText_Expected, text), e);
		}
		if (angle.signum() <= 0 || angle.compareTo(FULL_TURN) >= 0) {
			throw new IllegalArgumentException(NLS.bind(Messages.AngleText_Expected, text));
		}
		return angle;
	}
}
