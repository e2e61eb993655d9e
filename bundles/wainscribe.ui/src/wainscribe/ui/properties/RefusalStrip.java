// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import org.eclipse.jface.action.StatusLineManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import wainscribe.ui.Icon;

/** Says at the foot of a property sheet why a text is no value; takes no room while there is nothing to say. */
final class RefusalStrip extends StatusLineManager {

	private final Composite strip;
	private final Label text;

	RefusalStrip(Composite parent) {
		strip = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 5).applyTo(strip);
		GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(strip);
		LocalResourceManager images = new LocalResourceManager(JFaceResources.getResources(), strip);
		Label mark = new Label(strip, SWT.NONE);
		Image image = images.get(Icon.ERROR.descriptor());
		mark.setImage(image);
		GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(mark);
		text = new Label(strip, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(50, SWT.DEFAULT).applyTo(text);
	}

	@Override
	public void setErrorMessage(String message) {
		if (strip.isDisposed()) {
			return;
		}
		boolean something = message != null && !message.isEmpty();
		text.setText(something ? message.replace("&", "&&") : ""); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		((GridData) strip.getLayoutData()).exclude = !something;
		strip.setVisible(something);
		strip.getParent().layout(true, true);
	}

	@Override
	public void setErrorMessage(Image image, String message) {
		setErrorMessage(message);
	}

	/** The sheet also tells the description of each property here; there is none. */
	@Override
	public void setMessage(String message) {
		// nothing to say beside refusals
	}
}
