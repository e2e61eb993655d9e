// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.util.EcoreUtil;

import wainscribe.model.PlacedFrame;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.WainscribePackage.Literals;
import wainscribe.model.Wall;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;

/**
 * Places and locks the frames of one tier of a wall by hand.
 * <p>
 * A tier that has any placed frame holds exactly those, so whoever moves or locks one frame hands over all frames of its
 * tier, the others where they stand now: nothing else moves, and it is one step of the history.
 */
public final class PlaceFramesCommand extends EditCommand {

	private final Wall wall;
	private final List<PlacedFrame> present;
	private final List<FramePlace> places;

	/**
	 * Creates a command for frames that are all moved, sized or locked.
	 *
	 * @param label   the name of the step
	 * @param wall    the wall
	 * @param present the placed frames that the tier has now; empty when the layout has decided so far
	 * @param places  where all frames of the tier are to stand; the first ones are those of {@code present}, in its order
	 */
	public PlaceFramesCommand(String label, Wall wall, List<PlacedFrame> present, List<FramePlace> places) {
		super(label, wall);
		this.wall = wall;
		this.present = List.copyOf(present);
		this.places = List.copyOf(places);
	}

	/** Locks the frames of a tier where they stand. */
	public static PlaceFramesCommand locking(Wall wall, List<FramePlace> places) {
		return new PlaceFramesCommand(Messages.PlaceFramesCommand_Lock, wall, List.of(), places);
	}

	/** Moves a frame and locks the tier. */
	public static PlaceFramesCommand moving(Wall wall, List<PlacedFrame> present, List<FramePlace> places) {
		return new PlaceFramesCommand(Messages.PlaceFramesCommand_Move, wall, present, places);
	}

	/** Sizes a frame and locks the tier. */
	public static PlaceFramesCommand sizing(Wall wall, List<PlacedFrame> present, List<FramePlace> places) {
		return new PlaceFramesCommand(Messages.PlaceFramesCommand_Size, wall, present, places);
	}

	@Override
	protected boolean isEffective() {
		return !places.isEmpty() && places.size() >= present.size() && wall.getPlacedFrames().containsAll(present)
				&& places.stream().map(FramePlace::outline).allMatch(PlaceFramesCommand::hasArea)
				&& (places.size() > present.size() || movesAny());
	}

	private boolean movesAny() {
		for (int i = 0; i < present.size(); i++) {
			if (!Outlines.of(present.get(i)).equals(places.get(i).outline())) {
				return true;
			}
		}
		return false;
	}

	private static boolean hasArea(Outline outline) {
		return outline.width().signum() > 0 && outline.height().signum() > 0;
	}

	@Override
	protected void perform(ChangeLog changes) {
		for (int i = 0; i < places.size(); i++) {
			if (i < present.size()) {
				move(present.get(i), places.get(i).outline(), changes);
			} else {
				changes.add(wall, Literals.WALL__PLACED_FRAMES, placed(places.get(i)));
			}
		}
	}

	private static void move(PlacedFrame frame, Outline outline, ChangeLog changes) {
		if (!Outlines.of(frame).equals(outline)) {
			changes.set(frame, Literals.PLACED__X, outline.x0());
			changes.set(frame, Literals.PLACED__Y, outline.y0());
			changes.set(frame, Literals.PLACED__WIDTH, outline.width());
			changes.set(frame, Literals.PLACED__HEIGHT, outline.height());
		}
	}

	static PlacedFrame placed(FramePlace place) {
		PlacedFrame frame = WainscribeFactory.eINSTANCE.createPlacedFrame();
		frame.setId(EcoreUtil.generateUUID());
		frame.setName(place.name());
		frame.setX(place.outline().x0());
		frame.setY(place.outline().y0());
		frame.setWidth(place.outline().width());
		frame.setHeight(place.outline().height());
		return frame;
	}

	@Override
	public Collection<?> getAffectedObjects() {
		return List.of(Objects.requireNonNullElse(wall.getRoom(), wall));
	}
}
