// SPDX-License-Identifier: EPL-2.0
package wainscribe.app;

import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.ui.IWorkbenchPage;

/**
 * Keeps out what the platform's bundles put into the menus of any workbench: opening files of any kind, lists of keys,
 * line ends.
 */
final class ForeignActionSets {

	private static final String POINT = "org.eclipse.ui.actionSets"; //$NON-NLS-1$
	private static final String OURS = "wainscribe."; //$NON-NLS-1$

	private ForeignActionSets() {
	}

	/**
	 * Hides every set of menu entries that is not ours.
	 *
	 * @param page that shows them; nothing happens without one
	 */
	static void hide(IWorkbenchPage page) {
		if (page == null) {
			return;
		}
		for (IConfigurationElement set : Platform.getExtensionRegistry().getConfigurationElementsFor(POINT)) {
			if (!set.getContributor().getName().startsWith(OURS)) {
				page.hideActionSet(set.getAttribute("id")); //$NON-NLS-1$
			}
		}
	}
}
