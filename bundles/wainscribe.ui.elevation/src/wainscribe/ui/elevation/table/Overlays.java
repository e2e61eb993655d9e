// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;

/** Knows what is laid over the drawing of one table now. It belongs to the table, not to the room, and is not undone. */
public final class Overlays {

	private final Set<Overlay> shown = EnumSet.of(Overlay.AXES, Overlay.GUIDES);
	private final Runnable changed;
	private Ghost ghost = Ghost.NONE;

	/**
	 * Creates overlays: axes and guides are shown, nothing else.
	 *
	 * @param changed is run when something was shown or hidden
	 */
	Overlays(Runnable changed) {
		this.changed = Objects.requireNonNull(changed);
	}

	/** Tells whether something is shown. */
	public boolean shows(Overlay overlay) {
		return shown.contains(overlay);
	}

	/** Shows or hides something. */
	public void show(Overlay overlay, boolean visible) {
		if (visible ? shown.add(overlay) : shown.remove(overlay)) {
			changed.run();
		}
	}

	/** Returns which wall is a ghost on the one that is worked on. */
	public Ghost ghost() {
		return ghost;
	}

	/** Shows another wall as a ghost. */
	public void setGhost(Ghost other) {
		if (ghost != Objects.requireNonNull(other)) {
			ghost = other;
			changed.run();
		}
	}
}
