// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import wainscribe.ui.elevation.Messages;

/** What is laid over the drawing to work by, and can be shown or hidden. */
public enum Overlay {

	/** Marked axes and the axes of what stands in the middle of a wall. */
	AXES(Messages.Overlay_Axes),
	/** Guides pulled out of the rulers. Hidden ones draw nothing to them. */
	GUIDES(Messages.Overlay_Guides),
	/** The whole room, small, under the drawing. */
	OVERVIEW(Messages.Overlay_Overview);

	private final String label;

	Overlay(String label) {
		this.label = label;
	}

	/** Returns its name for people. */
	public String label() {
		return label;
	}
}
