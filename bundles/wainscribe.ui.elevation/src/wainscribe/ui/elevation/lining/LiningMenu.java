// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.lining;

import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;

import wainscribe.commands.Alignment;
import wainscribe.ui.drafting.actions.SimpleAction;

/** A menu of the alignments that would change something now. */
public final class LiningMenu {

	private LiningMenu() {
	}

	/** Adds the menu to another, unless nothing can be lined up. */
	public static void addTo(IMenuManager menu, Lining lining) {
		MenuManager sub = new MenuManager(Messages.LiningMenu_Title, LiningIcons.of(Alignment.LEFT), null);
		for (Alignment alignment : Alignment.values()) {
			if (lining.can(alignment)) {
				sub.add(new SimpleAction(LiningWords.of(alignment), LiningIcons.of(alignment), () -> lining.run(alignment)));
			}
		}
		if (!sub.isEmpty()) {
			menu.add(sub);
		}
	}
}
