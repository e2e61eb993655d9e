// SPDX-License-Identifier: EPL-2.0
package wainscribe.app.appearance;

import java.util.Map;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.e4.ui.css.swt.theme.ITheme;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.menus.UIElement;

/**
 * Turns the window light or dark at once and keeps the choice for the next start.
 *
 * <p>The platform offers no other way to change a theme at run time than its engine, which it still calls provisional.
 */
@SuppressWarnings("restriction")
public final class AppearanceHandler extends AbstractHandler implements IElementUpdater {

	private static final String COMMAND = "wainscribe.app.appearance"; //$NON-NLS-1$
	private static final String THEME = "wainscribe.app.appearance.theme"; //$NON-NLS-1$

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		String key = event.getParameter(THEME);
		Appearance chosen = Appearance.ofKey(key)
			.orElseThrow(() -> new ExecutionException("no appearance is called " + key)); //$NON-NLS-1$
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
		// true: the theme engine itself stores the choice in the workspace
		themes().setTheme(chosen.themeId(), true);
		window.getService(ICommandService.class).refreshElements(COMMAND, null);
		return null;
	}

	@Override
	public void updateElement(UIElement element, @SuppressWarnings("rawtypes") Map parameters) {
		ITheme active = themes().getActiveTheme();
		element.setChecked(active != null && Appearance.ofKey(String.valueOf(parameters.get(THEME)))
			.filter(appearance -> appearance.themeId().equals(active.getId())).isPresent());
	}

	private static IThemeEngine themes() {
		return PlatformUI.getWorkbench().getService(IEclipseContext.class).get(IThemeEngine.class);
	}
}
