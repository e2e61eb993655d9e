// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The drawing table: the elevation in the middle, everything else around it. */
public final class DesignPerspective implements IPerspectiveFactory {

	/** Identifies the perspective that the desktop opens with. */
	public static final String ID = "wainscribe.ui.design"; //$NON-NLS-1$

	@Override
	public void createInitialLayout(IPageLayout layout) {
		layout.setEditorAreaVisible(true);
	}
}
