// SPDX-License-Identifier: EPL-2.0
package wainscribe.app;

import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.ActionFactory.IWorkbenchAction;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

/**
 * Lays out the menu bar. Its menus have ids of our own, because the usual ones draw in entries of a programmer's
 * workbench. Other bundles add to them by command, in these places:
 *
 * <ul>
 * <li>{@code menu:wainscribe.file.new?after=additions}: new things
 * <li>{@code menu:wainscribe.file?after=open}, {@code menu:wainscribe.file?after=export}
 * <li>{@code menu:wainscribe.edit?after=more}
 * <li>{@code menu:wainscribe.view?after=panels}, {@code menu:wainscribe.view?after=zoom},
 * {@code menu:wainscribe.view?after=appearance}
 * <li>{@code menu:wainscribe.help?after=more}
 * <li>{@code menu:org.eclipse.ui.main.menu?after=additions}: menus between View and Help
 * </ul>
 */
final class DesktopActionBarAdvisor extends ActionBarAdvisor {

	private static final String MENU_FILE = "wainscribe.file"; //$NON-NLS-1$
	private static final String MENU_NEW = "wainscribe.file.new"; //$NON-NLS-1$
	private static final String MENU_EDIT = "wainscribe.edit"; //$NON-NLS-1$
	private static final String MENU_VIEW = "wainscribe.view"; //$NON-NLS-1$
	private static final String MENU_HELP = "wainscribe.help"; //$NON-NLS-1$
	private static final String GROUP_OPEN = "open"; //$NON-NLS-1$
	private static final String GROUP_EXPORT = "export"; //$NON-NLS-1$
	private static final String GROUP_PANELS = "panels"; //$NON-NLS-1$
	private static final String GROUP_ZOOM = "zoom"; //$NON-NLS-1$
	private static final String GROUP_APPEARANCE = "appearance"; //$NON-NLS-1$
	private static final String GROUP_MORE = "more"; //$NON-NLS-1$

	DesktopActionBarAdvisor(IActionBarConfigurer configurer) {
		super(configurer);
	}

	@Override
	protected void makeActions(IWorkbenchWindow window) {
		for (ActionFactory factory : new ActionFactory[] { ActionFactory.SAVE, ActionFactory.SAVE_ALL,
			ActionFactory.QUIT, ActionFactory.UNDO, ActionFactory.REDO, ActionFactory.CUT, ActionFactory.COPY,
			ActionFactory.PASTE, ActionFactory.DELETE, ActionFactory.SELECT_ALL, ActionFactory.ABOUT }) {
			register(factory.create(window));
		}
		IWorkbenchAction close = ActionFactory.CLOSE.create(window);
		close.setText(Messages.DesktopActionBarAdvisor_Close);
		register(close);
		IWorkbenchAction restore = ActionFactory.RESET_PERSPECTIVE.create(window);
		restore.setText(Messages.DesktopActionBarAdvisor_RestoreArrangement);
		register(restore);
	}

	@Override
	protected void fillMenuBar(IMenuManager bar) {
		bar.add(fileMenu());
		bar.add(editMenu());
		bar.add(viewMenu());
		bar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
		bar.add(helpMenu());
	}

	private IMenuManager fileMenu() {
		IMenuManager menu = new MenuManager(Messages.DesktopActionBarAdvisor_File, MENU_FILE);
		IMenuManager create = new MenuManager(Messages.DesktopActionBarAdvisor_New, MENU_NEW);
		create.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
		menu.add(create);
		menu.add(new GroupMarker(GROUP_OPEN));
		menu.add(new Separator());
		menu.add(action(ActionFactory.SAVE));
		menu.add(action(ActionFactory.SAVE_ALL));
		menu.add(new Separator(GROUP_EXPORT));
		menu.add(new Separator());
		menu.add(action(ActionFactory.CLOSE));
		menu.add(new Separator());
		menu.add(action(ActionFactory.QUIT));
		return menu;
	}

	private IMenuManager editMenu() {
		IMenuManager menu = new MenuManager(Messages.DesktopActionBarAdvisor_Edit, MENU_EDIT);
		menu.add(action(ActionFactory.UNDO));
		menu.add(action(ActionFactory.REDO));
		menu.add(new Separator());
		menu.add(action(ActionFactory.CUT));
		menu.add(action(ActionFactory.COPY));
		menu.add(action(ActionFactory.PASTE));
		menu.add(new Separator());
		menu.add(action(ActionFactory.DELETE));
		menu.add(action(ActionFactory.SELECT_ALL));
		menu.add(new Separator(GROUP_MORE));
		return menu;
	}

	private IMenuManager viewMenu() {
		IMenuManager menu = new MenuManager(Messages.DesktopActionBarAdvisor_View, MENU_VIEW);
		menu.add(new GroupMarker(GROUP_PANELS));
		menu.add(new Separator(GROUP_ZOOM));
		menu.add(new Separator(GROUP_APPEARANCE));
		menu.add(new Separator());
		menu.add(action(ActionFactory.RESET_PERSPECTIVE));
		return menu;
	}

	private IMenuManager helpMenu() {
		IMenuManager menu = new MenuManager(Messages.DesktopActionBarAdvisor_Help, MENU_HELP);
		menu.add(new GroupMarker(GROUP_MORE));
		menu.add(new Separator());
		menu.add(action(ActionFactory.ABOUT));
		return menu;
	}

	private IAction action(ActionFactory factory) {
		return getAction(factory.getId());
	}
}
