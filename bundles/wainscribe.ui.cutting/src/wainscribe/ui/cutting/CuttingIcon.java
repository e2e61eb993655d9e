// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.cutting;

import java.util.Locale;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceLocator;

/** The drawings on the buttons of the Cutting view. */
enum CuttingIcon {

	/** Keep the plan. */
	ACCEPT,
	/** End the planning. */
	STOP,
	/** The sheet beside the saw. */
	CUT_SHEET,
	/** Labels of the pieces. */
	PIECE_LABELS;

	private static final String BUNDLE = "wainscribe.ui.cutting"; //$NON-NLS-1$

	ImageDescriptor descriptor() {
		String path = "icons/" + name().toLowerCase(Locale.ROOT).replace('_', '-') + ".svg"; //$NON-NLS-1$ //$NON-NLS-2$
		return ResourceLocator.imageDescriptorFromBundle(BUNDLE, path).orElseGet(ImageDescriptor::getMissingImageDescriptor);
	}
}
