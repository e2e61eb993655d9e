// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.drafting.actions;

import java.util.Objects;
import java.util.function.Consumer;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuCreator;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.ToolItem;

/** A button with a menu that is made anew each time it opens. */
public final class DropDownAction extends Action implements IMenuCreator {

	private final Consumer<MenuManager> filler;
	private MenuManager menu;

	/**
	 * Creates an action.
	 *
	 * @param text   its name
	 * @param icon   its drawing, null for none
	 * @param filler puts entries into the menu
	 */
	public DropDownAction(String text, ImageDescriptor icon, Consumer<MenuManager> filler) {
		super(text, IAction.AS_DROP_DOWN_MENU);
		this.filler = Objects.requireNonNull(filler);
		setImageDescriptor(icon);
		setToolTipText(text);
		setMenuCreator(this);
	}

	@Override
	public Menu getMenu(Control parent) {
		dispose();
		menu = new MenuManager();
		filler.accept(menu);
		return menu.createContextMenu(parent);
	}

	@Override
	public Menu getMenu(Menu parent) {
		return null;
	}

	/** The button itself opens the menu too. */
	@Override
	public void runWithEvent(Event event) {
		if (event.widget instanceof ToolItem item) {
			Menu opened = getMenu(item.getParent());
			Rectangle bounds = item.getBounds();
			Point corner = item.getParent().toDisplay(bounds.x, bounds.y + bounds.height);
			opened.setLocation(corner);
			opened.setVisible(true);
		}
	}

	@Override
	public void dispose() {
		if (menu != null) {
			menu.dispose();
			menu = null;
		}
	}
}
