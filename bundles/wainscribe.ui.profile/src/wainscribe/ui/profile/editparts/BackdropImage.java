// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.editparts;

import java.nio.file.Path;

import org.eclipse.core.runtime.ILog;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Display;

import wainscribe.ui.profile.backdrop.Backdrop;
import wainscribe.ui.profile.desk.Plane;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.figures.BackdropPicture;

/** Keeps the picture of a backdrop while it is shown. To be disposed. */
final class BackdropImage {

	private Path file;
	private Image image;

	/** Returns what is seen behind a desk; nothing if the picture is hidden, or gone since it was chosen. */
	BackdropPicture of(ProfileDesk desk) {
		Backdrop backdrop = desk.session().backdrop().orElse(null);
		if (backdrop == null || !backdrop.seen()) {
			return BackdropPicture.NONE;
		}
		if (!backdrop.file().equals(file)) {
			load(backdrop.file());
		}
		return image == null ? BackdropPicture.NONE : new BackdropPicture(image, place(backdrop, desk.plane()));
	}

	void dispose() {
		if (image != null) {
			image.dispose();
			image = null;
		}
		file = null;
	}

	private void load(Path path) {
		dispose();
		file = path;
		try {
			image = new Image(Display.getCurrent(), path.toString());
		} catch (SWTException e) {
			ILog.get().warn("backdrop " + path + " can't be shown: " + e.getMessage()); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	private Rectangle place(Backdrop backdrop, Plane plane) {
		org.eclipse.swt.graphics.Rectangle size = image.getBounds();
		double height = size.height * backdrop.scale();
		int left = (int) Math.round(plane.column(backdrop.out()));
		int top = (int) Math.round(plane.row(backdrop.up() + height));
		int right = (int) Math.round(plane.column(backdrop.out() + size.width * backdrop.scale()));
		int bottom = (int) Math.round(plane.row(backdrop.up()));
		return new Rectangle(left, top, right - left, bottom - top);
	}
}
