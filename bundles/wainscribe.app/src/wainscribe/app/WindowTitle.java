// SPDX-License-Identifier: EPL-2.0
package wainscribe.app;

import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IPropertyListener;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;

/** Keeps the window's title to what is being worked on: the open room first, then the product. */
final class WindowTitle implements IPartListener2, IPropertyListener {

	private final IWorkbenchWindowConfigurer configurer;

	private WindowTitle(IWorkbenchWindowConfigurer configurer) {
		this.configurer = configurer;
	}

	/** Starts to keep the title of a window; ends with the window. */
	static void follow(IWorkbenchWindowConfigurer configurer) {
		WindowTitle title = new WindowTitle(configurer);
		IWorkbenchWindow window = configurer.getWindow();
		window.getPartService().addPartListener(title);
		title.refresh();
	}

	@Override
	public void partOpened(IWorkbenchPartReference reference) {
		reference.addPropertyListener(this);
		refresh();
	}

	@Override
	public void partClosed(IWorkbenchPartReference reference) {
		reference.removePropertyListener(this);
		refresh();
	}

	@Override
	public void partActivated(IWorkbenchPartReference reference) {
		refresh();
	}

	@Override
	public void partBroughtToTop(IWorkbenchPartReference reference) {
		refresh();
	}

	@Override
	public void propertyChanged(Object source, int property) {
		if (property == IWorkbenchPart.PROP_TITLE) {
			refresh();
		}
	}

	private void refresh() {
		String product = Messages.DesktopApplication_Title;
		IWorkbenchPage page = configurer.getWindow().getActivePage();
		IEditorPart editor = page == null ? null : page.getActiveEditor();
		String title = editor == null ? product : NLS.bind(Messages.WindowTitle_PartAndProduct, editor.getTitle(), product);
		if (!title.equals(configurer.getTitle())) {
			configurer.setTitle(title);
		}
	}
}
