// SPDX-License-Identifier: EPL-2.0
package wainscribe.app;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.ide.IDE;
import wainscribe.ui.session.HomeProjects;

/** Decides what the workbench opens with and keeps the workspace when it closes. */
final class DesktopWorkbenchAdvisor extends WorkbenchAdvisor {

	private static final String DESIGN_PERSPECTIVE = "wainscribe.ui.design"; //$NON-NLS-1$

	private final List<Path> homes;

	DesktopWorkbenchAdvisor(List<Path> homes) {
		this.homes = List.copyOf(homes);
	}

	@Override
	public void initialize(IWorkbenchConfigurer configurer) {
		configurer.setSaveAndRestore(true);
		// navigators and editors find labels and children of workspace files through these adapters
		IDE.registerAdapters();
	}

	@Override
	public String getInitialWindowPerspectiveId() {
		return DESIGN_PERSPECTIVE;
	}

	@Override
	public IAdaptable getDefaultPageInput() {
		return ResourcesPlugin.getWorkspace().getRoot();
	}

	@Override
	public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
		return new DesktopWindowAdvisor(configurer);
	}

	@Override
	public void preStartup() {
		HomeProjects projects = new HomeProjects(ResourcesPlugin.getWorkspace());
		for (Path home : homes) {
			try {
				projects.adopt(home, null);
			} catch (CoreException e) {
				ILog.get().log(e.getStatus());
			}
		}
	}

	@Override
	public void postShutdown() {
		try {
			ResourcesPlugin.getWorkspace().save(true, null);
		} catch (CoreException e) {
			ILog.get().log(e.getStatus());
		}
	}
}
