// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.PlacedFrame;
import wainscribe.model.Wall;
import wainscribe.model.WainscribePackage.Literals;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;

/** Puts the frames of another wall on a wall, placed by hand like there. Frames that were placed on it before give way. */
public final class CopyFramesCommand extends EditCommand {

	private final Wall target;
	private final List<Outline> places;

	/**
	 * Creates a command.
	 *
	 * @param source the wall the frames come from
	 * @param target the wall that gets them
	 * @param places where they stand on the target
	 */
	public CopyFramesCommand(Wall source, Wall target, List<Outline> places) {
		super(NLS.bind(Messages.CopyFramesCommand_Label, Objects.requireNonNullElse(source.getName(), "")), target); //$NON-NLS-1$
		this.target = target;
		this.places = List.copyOf(places);
	}

	@Override
	protected boolean isEffective() {
		return !places.isEmpty() && !places.equals(target.getPlacedFrames().stream().map(Outlines::of).toList());
	}

	@Override
	protected void perform(ChangeLog changes) {
		for (PlacedFrame frame : List.copyOf(target.getPlacedFrames())) {
			changes.remove(target, Literals.WALL__PLACED_FRAMES, frame);
		}
		places.forEach(place -> changes.add(target, Literals.WALL__PLACED_FRAMES, PlaceFramesCommand.placed(new FramePlace(null, place))));
	}

	@Override
	public Collection<?> getAffectedObjects() {
		return List.of(Objects.requireNonNullElse(target.getRoom(), target));
	}
}
