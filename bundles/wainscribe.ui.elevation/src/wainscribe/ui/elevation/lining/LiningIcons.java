// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.lining;

import java.util.Locale;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceLocator;

import wainscribe.commands.Alignment;

/** Drawings of the alignments. */
final class LiningIcons {

	private LiningIcons() {
	}

	static ImageDescriptor of(Alignment alignment) {
		String path = "icons/line-up-" + alignment.name().toLowerCase(Locale.ROOT).replace('_', '-') + ".svg"; //$NON-NLS-1$ //$NON-NLS-2$
		return ResourceLocator.imageDescriptorFromBundle("wainscribe.ui.elevation", path) //$NON-NLS-1$
				.orElseGet(ImageDescriptor::getMissingImageDescriptor);
	}
}
