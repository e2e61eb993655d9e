// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui;

/**
 * Selects a thing on a wall by what a finding says of it.
 * <p>
 * An editor that draws a room answers {@code getAdapter(ElementSelector.class)} with one; the findings call it when a finding
 * is chosen.
 */
public interface ElementSelector {

	/**
	 * Shows a wall and selects a thing on it, as if it had been clicked.
	 *
	 * @param wall               name of the wall; empty for the whole room
	 * @param elementIdOrFrameId name or id of a surveyed thing, id of a frame, {@code rail} or {@code base}; empty for the whole
	 *                           wall
	 */
	void select(String wall, String elementIdOrFrameId);

	/**
	 * Lights a thing as if the pointer were over it, and no other; the selection stays.
	 *
	 * @param wall               name of the wall
	 * @param elementIdOrFrameId as in {@link #select}; empty to light nothing
	 */
	default void light(String wall, String elementIdOrFrameId) {
		// an editor that can't light leaves its drawing as it is
	}
}
