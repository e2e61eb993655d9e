// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.dxf;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Writes pairs of group code and value, the whole syntax of a text DXF file (group codes as published in the DXF
 * Reference, release 12).
 */
final class DxfWriter {

	private static final int PLACES = 6;

	private final StringBuilder text = new StringBuilder();

	DxfWriter pair(int code, String value) {
		text.append(code).append("\r\n").append(value).append("\r\n");
		return this;
	}

	DxfWriter pair(int code, int value) {
		return pair(code, Integer.toString(value));
	}

	DxfWriter pair(int code, double value) {
		BigDecimal rounded = BigDecimal.valueOf(value).setScale(PLACES, RoundingMode.HALF_EVEN);
		return pair(code, (rounded.signum() == 0 ? BigDecimal.ZERO.setScale(1) : rounded.stripTrailingZeros().scale() < 1
				? rounded.setScale(1, RoundingMode.HALF_EVEN)
				: rounded.stripTrailingZeros()).toPlainString());
	}

	/** Writes a point: group codes 10, 20, 30 and so on for the first, 11, 21, 31 for the second of an entity. */
	DxfWriter point(int first, double x, double y) {
		return pair(first, x).pair(first + 10, y).pair(first + 20, 0.0);
	}

	DxfWriter section(String name) {
		return pair(0, "SECTION").pair(2, name);
	}

	DxfWriter endSection() {
		return pair(0, "ENDSEC");
	}

	String text() {
		return text.toString();
	}
}
