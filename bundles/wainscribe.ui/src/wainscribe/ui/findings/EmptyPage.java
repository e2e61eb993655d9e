// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.findings;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import wainscribe.ui.Icon;

/** What stands where findings would be. */
final class EmptyPage {

	private final Composite page;
	private final Label mark;
	private final Label text;
	private final LocalResourceManager images;

	EmptyPage(Composite parent) {
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(16, 14).spacing(8, 0).applyTo(page);
		images = new LocalResourceManager(JFaceResources.getResources(), page);
		mark = new Label(page, SWT.NONE);
		GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(mark);
		text = new Label(page, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
	}

	Control control() {
		return page;
	}

	/**
	 * Says something.
	 *
	 * @param icon  drawing beside it
	 * @param words what is said
	 */
	void say(Icon icon, String words) {
		mark.setImage(images.get(icon.descriptor()));
		text.setText(words.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		page.layout();
	}
}
