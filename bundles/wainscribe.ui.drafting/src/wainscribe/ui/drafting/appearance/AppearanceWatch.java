// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.drafting.appearance;

import java.util.function.Consumer;

import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.ui.services.IServiceLocator;
import org.osgi.service.event.EventHandler;

/** Tells when the theme of the workbench or the contrast of the system has changed. */
public final class AppearanceWatch {

	private static final String THEME_CHANGED = "org/eclipse/e4/ui/css/swt/theme/ThemeManager/themeChanged"; //$NON-NLS-1$

	private AppearanceWatch() {
	}

	/**
	 * Follows the appearance as long as a control lives.
	 *
	 * @param surroundings a control that the theme colours
	 * @param services     where the workbench's events are found
	 * @param listener     is told the colours that go with the surroundings
	 */
	public static void follow(Control surroundings, IServiceLocator services, Consumer<TableColours> listener) {
		Runnable tell = () -> {
			if (!surroundings.isDisposed()) {
				listener.accept(Appearance.of(surroundings));
			}
		};
		// the theme colours controls after it says that it has changed
		Runnable soon = () -> surroundings.getDisplay().asyncExec(tell);
		soon.run();
		Listener contrast = event -> soon.run();
		Display display = surroundings.getDisplay();
		display.addListener(SWT.Settings, contrast);
		surroundings.addListener(SWT.Dispose, event -> display.removeListener(SWT.Settings, contrast));
		IEventBroker broker = services.getService(IEventBroker.class);
		if (broker != null) {
			EventHandler handler = event -> soon.run();
			broker.subscribe(THEME_CHANGED, handler);
			surroundings.addListener(SWT.Dispose, event -> broker.unsubscribe(handler));
		}
	}
}
