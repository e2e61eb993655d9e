// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import wainscribe.drawing.Style;
import wainscribe.drawing.Tone;

/** Colours and sizes of printed pages; sizes in millimetres. */
final class Ink {

	static final Tone TEXT = Tone.of(0x2c2a26);
	static final Tone SOFT = Tone.of(0x67625a);
	static final Tone LINE = Tone.of(0xd4cdc0);
	static final Tone ACCENT = Tone.of(0x2b6f7c);
	static final Tone ERROR = Tone.of(0xa3312a);
	static final Tone WARNING = Tone.of(0x8a5a00);
	static final Tone ADVICE = Tone.of(0x3c6145);

	static final double BODY = 3.4;
	static final double SMALL = 2.8;
	static final double LEADING = 1.42;

	private Ink() {
	}

	static Style rule() {
		return Style.stroked(LINE, 0.2);
	}

	static Style line() {
		return Style.stroked(TEXT, 0.25);
	}

	static Tone severity(String word) {
		return switch (word) {
			case "error" -> ERROR;
			case "warning" -> WARNING;
			default -> ADVICE;
		};
	}
}
