// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.drafting.painting;

import java.util.HashMap;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Display;

import wainscribe.drawing.TextMetrics;

/** Fonts of the drawing table by size in pixels, and the widths of texts in them. To be disposed. */
public final class Letters implements TextMetrics {

	private static final double POINTS_PER_INCH = 72;
	/** Widths are measured in a large size, where rounding to pixels does not matter. */
	private static final int MEASURED_SIZE = 100;
	/** Fonts set a text a little wider in small sizes. */
	private static final double SMALL_SIZES = 1.03;

	private final Display display;
	private final Map<Integer, Font> fonts = new HashMap<>();
	private final Map<String, Double> widths = new HashMap<>();
	private final Map<Font, Integer> baselines = new HashMap<>();

	/**
	 * Creates the fonts of a display when they are asked for.
	 *
	 * @param display the display
	 */
	public Letters(Display display) {
		this.display = display;
	}

	/** Returns the display. */
	public Device device() {
		return display;
	}

	/**
	 * Returns the system's face in a size.
	 *
	 * @param pixels height of a line of text without spacing
	 */
	public Font ofSize(double pixels) {
		// half pixels are steps fine enough for the eye and few enough for the system
		return fonts.computeIfAbsent((int) Math.max(2, Math.round(pixels * 2)), half -> create(half / 2.0));
	}

	@Override
	public double width(String text, double size) {
		return widths.computeIfAbsent(text, this::measured) * size;
	}

	/** Returns how far below the top of a line of text its base line lies, in pixels. */
	public int baseline(Font font) {
		return baselines.computeIfAbsent(font, this::measured);
	}

	/** Gives the fonts back. */
	public void dispose() {
		baselines.clear();
		fonts.values().forEach(Font::dispose);
		fonts.clear();
	}

	private int measured(Font font) {
		GC gc = new GC(display);
		try {
			gc.setFont(font);
			return gc.getFontMetrics().getAscent() + gc.getFontMetrics().getLeading();
		} finally {
			gc.dispose();
		}
	}

	private double measured(String text) {
		GC gc = new GC(display);
		try {
			gc.setFont(ofSize(MEASURED_SIZE));
			return gc.textExtent(text, 0).x * SMALL_SIZES / MEASURED_SIZE;
		} finally {
			gc.dispose();
		}
	}

	private Font create(double pixels) {
		FontData data = display.getSystemFont().getFontData()[0];
		data.height = (float) (pixels * POINTS_PER_INCH / display.getDPI().y);
		data.setStyle(SWT.NORMAL);
		return new Font(display, data);
	}
}
