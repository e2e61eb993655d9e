// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** Gives a control that has no label of its own the name that a screen reader says. */
public final class SpokenName extends AccessibleAdapter {

	private final String name;

	private SpokenName(String name) {
		this.name = name;
	}

	/**
	 * Names a control.
	 *
	 * @param control the control
	 * @param name    what is said
	 */
	public static void give(Control control, String name) {
		control.getAccessible().addAccessibleListener(new SpokenName(name));
	}

	/** The name of the control itself, not of a row in it. */
	@Override
	public void getName(AccessibleEvent event) {
		if (event.childID == ACC.CHILDID_SELF) {
			event.result = name;
		}
	}
}
