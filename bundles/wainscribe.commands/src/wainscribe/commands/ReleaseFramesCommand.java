// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.List;

import wainscribe.model.PlacedFrame;
import wainscribe.model.WainscribePackage.Literals;
import wainscribe.model.Wall;

/** Lets the room decide again where the frames of a tier stand: takes away the frames placed by hand. */
public final class ReleaseFramesCommand extends EditCommand {

	private final Wall wall;
	private final List<PlacedFrame> frames;

	/**
	 * Creates a command.
	 *
	 * @param wall   the wall
	 * @param frames its placed frames that are given up
	 */
	public ReleaseFramesCommand(Wall wall, List<PlacedFrame> frames) {
		super(Messages.ReleaseFramesCommand_Label, wall);
		this.wall = wall;
		this.frames = List.copyOf(frames);
	}

	@Override
	protected boolean isEffective() {
		return !frames.isEmpty() && wall.getPlacedFrames().containsAll(frames);
	}

	@Override
	protected void perform(ChangeLog changes) {
		frames.forEach(frame -> changes.remove(wall, Literals.WALL__PLACED_FRAMES, frame));
	}
}
