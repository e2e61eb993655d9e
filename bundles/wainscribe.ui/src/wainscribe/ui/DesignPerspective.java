// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import wainscribe.ui.findings.FindingsView;
import wainscribe.ui.home.HomeView;
import wainscribe.ui.properties.PropertiesView;

/** The drawing table: the elevation in the middle, the homes at its left, the numbers at its right, the findings below. */
public final class DesignPerspective implements IPerspectiveFactory {

	/** Identifies the perspective that the desktop opens with. */
	public static final String ID = "wainscribe.ui.design"; //$NON-NLS-1$

	private static final float HOMES = 0.2f;
	private static final float DRAWING_AND_FINDINGS = 0.71f;
	private static final float DRAWING = 0.72f;

	@Override
	public void createInitialLayout(IPageLayout layout) {
		String drawing = layout.getEditorArea();
		layout.setEditorAreaVisible(true);
		layout.addView(HomeView.ID, IPageLayout.LEFT, HOMES, drawing);
		layout.addView(PropertiesView.ID, IPageLayout.RIGHT, DRAWING_AND_FINDINGS, drawing);
		layout.addView(FindingsView.ID, IPageLayout.BOTTOM, DRAWING, drawing);
		for (String view : new String[] { HomeView.ID, PropertiesView.ID, FindingsView.ID }) {
			layout.getViewLayout(view).setCloseable(false);
		}
	}
}
