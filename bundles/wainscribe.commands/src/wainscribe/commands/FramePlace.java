// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.Objects;

import wainscribe.model.outline.Outline;

/**
 * Where one frame of a tier is to stand.
 *
 * @param name    its name on drawings, null for none
 * @param outline the outer edge of its moulding in the elevation of its wall
 */
public record FramePlace(String name, Outline outline) {

	/** Refuses a missing outline. */
	public FramePlace {
		Objects.requireNonNull(outline);
	}
}
