// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.services.AbstractServiceFactory;
import org.eclipse.ui.services.IServiceLocator;

/** Makes the one {@link HomeSessions} of a workbench when it is first asked for; the workbench disposes it. */
public final class HomeSessionsFactory extends AbstractServiceFactory {

	@Override
	public Object create(@SuppressWarnings("rawtypes") Class service, IServiceLocator parent, IServiceLocator locator) {
		if (service != HomeSessions.class) {
			return null;
		}
		Object known = parent.getService(HomeSessions.class);
		return known != null ? known
			: new HomeSessionRegistry(ResourcesPlugin.getWorkspace(), PlatformUI.getWorkbench().getDisplay(), RoomStudy.ofExtensions());
	}
}
