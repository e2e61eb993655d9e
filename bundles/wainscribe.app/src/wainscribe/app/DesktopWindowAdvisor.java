// SPDX-License-Identifier: EPL-2.0
package wainscribe.app;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Furnishes one window: menus, tool bar, status line and title, no bar of perspectives. */
final class DesktopWindowAdvisor extends WorkbenchWindowAdvisor {

	private static final Point INITIAL_SIZE = new Point(1360, 860);

	DesktopWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
		super(configurer);
	}

	@Override
	public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
		return new DesktopActionBarAdvisor(configurer);
	}

	@Override
	public void preWindowOpen() {
		IWorkbenchWindowConfigurer configurer = getWindowConfigurer();
		configurer.setInitialSize(INITIAL_SIZE);
		configurer.setShowMenuBar(true);
		configurer.setShowCoolBar(true);
		configurer.setShowStatusLine(true);
		configurer.setShowProgressIndicator(true);
		configurer.setShowPerspectiveBar(false);
		configurer.setTitle(Messages.DesktopApplication_Title);
	}

	@Override
	public void postWindowOpen() {
		ForeignActionSets.hide(getWindowConfigurer().getWindow().getActivePage());
	}

	@Override
	public void postWindowCreate() {
		WindowTitle.follow(getWindowConfigurer());
	}
}
