// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.figures;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;

/**
 * A picture behind the drawing, dimmed.
 *
 * @param image the picture; null for none
 * @param place the pixels it covers; null for none
 */
public record BackdropPicture(Image image, Rectangle place) {

	/** No picture. */
	public static final BackdropPicture NONE = new BackdropPicture(null, null);

	private static final int DIM = 105;

	void paint(Graphics graphics) {
		if (image != null && !image.isDisposed() && !place.isEmpty()) {
			graphics.setAlpha(DIM);
			graphics.setInterpolation(SWT.HIGH);
			graphics.drawImage(image, new Rectangle(image.getBounds().x, image.getBounds().y, image.getBounds().width,
					image.getBounds().height), place);
			graphics.setAlpha(255);
		}
	}
}
