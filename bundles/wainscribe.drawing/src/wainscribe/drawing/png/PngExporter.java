// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.png;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;

import javax.imageio.ImageIO;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.Palette;
import wainscribe.drawing.export.ElevationExporter;
import wainscribe.drawing.text.Messages;

/** Writes an elevation as a picture for messages and web pages. */
public final class PngExporter implements ElevationExporter {

	/** Pixels for a millimetre of paper, about 150 to the inch. */
	private static final double PIXELS = 6;
	/** A longer side is never drawn, however long the wall. */
	private static final double MOST_PIXELS = 6000;

	@Override
	public String id() {
		return "png"; //$NON-NLS-1$
	}

	@Override
	public String name() {
		return Messages.PngExporter_Name;
	}

	@Override
	public String fileExtension() {
		return "png"; //$NON-NLS-1$
	}

	@Override
	public void write(Drawing drawing, OutputStream out) throws IOException {
		Bounds extent = drawing.extent();
		double longest = Math.max(extent.width(), extent.height());
		double pixels = Math.min(PIXELS / drawing.scale(), MOST_PIXELS / longest);
		BufferedImage image = new BufferedImage(size(extent.width() * pixels), size(extent.height() * pixels),
				BufferedImage.TYPE_INT_RGB);
		try (PngPainter painter = new PngPainter(image, extent, pixels, Palette.paper())) {
			painter.paint(drawing);
		}
		if (!ImageIO.write(image, "png", out)) { //$NON-NLS-1$
			throw new IOException("this Java runtime writes no PNG"); //$NON-NLS-1$
		}
	}

	private static int size(double pixels) {
		return Math.max(1, (int) Math.ceil(pixels));
	}
}
