// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;

import wainscribe.drawing.Bounds;
import wainscribe.drawing.Drawing;
import wainscribe.drawing.Palette;
import wainscribe.drawing.Role;
import wainscribe.drawing.png.PngExporter;
import wainscribe.model.length.LengthUnit;

class PngExporterTest {

	private static final double PIXELS = 6 / 20.0;

	private static BufferedImage image(Drawing drawing) throws Exception {
		return ImageIO.read(new ByteArrayInputStream(Exported.bytes(new PngExporter(), drawing)));
	}

	private static int at(BufferedImage image, Drawing drawing, double x, double y) {
		return image.getRGB((int) ((x - drawing.extent().x0()) * PIXELS), (int) ((drawing.extent().y1() - y) * PIXELS))
				& 0xffffff;
	}

	@Test
	void sixPixelsStandForAMillimetreOfPaper() throws Exception {
		Drawing drawing = Exported.drawing("A", LengthUnit.MILLIMETRE);
		BufferedImage image = image(drawing);
		assertEquals(Math.ceil(drawing.extent().width() * PIXELS), image.getWidth());
		assertEquals(Palette.paper().wall().rgb(), at(image, drawing, 1400, 2200), "the wall above the rail");
		assertEquals(Palette.paper().ground().rgb(), at(image, drawing, drawing.extent().x0() + 10, 2700), "beside the wall");
		assertNotEquals(Palette.paper().wall().rgb(), at(image, drawing, 117, 450), "the moulding of the frame");
	}

	@Test
	void lettersNeedNoFontOfTheMachine() throws Exception {
		Drawing named = Exported.drawing("P\u0159\u00edzem\u00ed \ud83d\ude00", LengthUnit.MILLIMETRE);
		BufferedImage image = image(named);
		Bounds title = named.shapes().filter(shape -> shape.role() == Role.TITLE).findFirst().orElseThrow()
				.bounds();
		int inked = 0;
		for (double x = title.x0(); x < title.x1(); x += 1 / PIXELS) {
			inked += at(image, named, x, title.centre().y()) == Palette.paper().ground().rgb() ? 0 : 1;
		}
		assertNotEquals(0, inked, "the title is written");
	}

	@Test
	void equalDrawingsGiveEqualBytes() throws Exception {
		assertArrayEquals(Exported.bytes(new PngExporter(), "A"), Exported.bytes(new PngExporter(), "A"));
	}
}
