// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.lining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;

import wainscribe.commands.Alignment;
import wainscribe.commands.FramePlace;
import wainscribe.commands.MoveElementCommand;
import wainscribe.commands.PlaceFramesCommand;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomDesign;
import wainscribe.model.Placed;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.elevation.editparts.BoxEditPart;
import wainscribe.ui.elevation.editparts.FixtureEditPart;
import wainscribe.ui.elevation.editparts.FrameEditPart;
import wainscribe.ui.elevation.editparts.OpeningEditPart;
import wainscribe.ui.elevation.editparts.ThingEditPart;
import wainscribe.ui.drafting.history.ModelCommand;
import wainscribe.ui.elevation.policies.TierFrames;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.FrameKey;

/**
 * Brings the things that are selected in line with the one selected last, or spreads them evenly, as one step. Frames are
 * placed by hand with it, as when they are dragged.
 */
public final class Lining {

	private final GraphicalViewer viewer;
	private final DrawingTable table;

	/** Creates the lining up of a viewer's selection. */
	public Lining(GraphicalViewer viewer, DrawingTable table) {
		this.viewer = Objects.requireNonNull(viewer);
		this.table = Objects.requireNonNull(table);
	}

	/** Tells whether an alignment would change anything now. */
	public boolean can(Alignment alignment) {
		return command(alignment).isPresent();
	}

	/** Does it, if it would change anything. */
	public void run(Alignment alignment) {
		command(alignment).ifPresent(command -> viewer.getEditDomain().getCommandStack().execute(new ModelCommand(command)));
	}

	private Optional<Command> command(Alignment alignment) {
		List<ThingEditPart> things = selected();
		boolean together = !alignment.isAlong() || things.stream().map(ThingEditPart::wall).distinct().count() == 1;
		if (things.size() < alignment.least() || !together) {
			return Optional.empty();
		}
		List<Outline> before = things.stream().map(thing -> thing.outline().orElseThrow()).toList();
		List<Outline> after = alignment.arrange(before, reference(things));
		List<Command> steps = new ArrayList<>();
		Map<TierKey, Map<FrameOutline, Outline>> frames = new LinkedHashMap<>();
		for (int i = 0; i < things.size(); i++) {
			if (!isOnWall(things.get(i), after.get(i))) {
				return Optional.empty();
			}
			if (things.get(i) instanceof FrameEditPart frame) {
				frames.computeIfAbsent(new TierKey(frame), key -> new LinkedHashMap<>()).put(frame.frame().orElseThrow(),
						after.get(i));
			} else if (things.get(i).getModel() instanceof Placed element) {
				steps.add(new MoveElementCommand(element, after.get(i).x0(), after.get(i).y0()));
			}
		}
		frames.forEach((key, moved) -> steps.add(moveFrames(key.any(), moved, LiningWords.of(alignment))));
		steps.removeIf(step -> !step.canExecute());
		return steps.isEmpty() ? Optional.empty() : Optional.of(new CompoundCommand(LiningWords.of(alignment), "", steps)); //$NON-NLS-1$
	}

	private Command moveFrames(FrameEditPart any, Map<FrameOutline, Outline> moved, String label) {
		TierFrames tier = TierFrames.of(table.session().design(), any.getModel());
		List<FramePlace> places = tier.frames().stream()
				.map(frame -> new FramePlace(null, moved.getOrDefault(frame, FrameKey.outline(frame)))).toList();
		// frames that stand as wished already are not locked for nothing
		boolean same = moved.entrySet().stream().allMatch(entry -> FrameKey.outline(entry.getKey()).equals(entry.getValue()));
		return new PlaceFramesCommand(label, tier.wall(), tier.placed(), same && tier.placed().isEmpty() ? List.of() : places);
	}

	/** Frames on a slope, the rail and what is in the wall stay where they are. */
	private List<ThingEditPart> selected() {
		RoomDesign design = table.session().design();
		List<ThingEditPart> things = new ArrayList<>();
		for (Object part : viewer.getSelectedEditParts()) {
			boolean movable = part instanceof BoxEditPart || part instanceof FixtureEditPart || part instanceof OpeningEditPart
					|| part instanceof FrameEditPart frame && frame.frame().isPresent()
							&& TierFrames.of(design, frame.getModel()).canBePlaced();
			if (movable && ((ThingEditPart) part).outline().isPresent()) {
				things.add((ThingEditPart) part);
			}
		}
		return things;
	}

	private static int reference(List<ThingEditPart> things) {
		for (int i = 0; i < things.size(); i++) {
			if (things.get(i).getSelected() == EditPart.SELECTED_PRIMARY) {
				return i;
			}
		}
		return things.size() - 1;
	}

	private static boolean isOnWall(ThingEditPart thing, Outline outline) {
		return outline.x0().signum() >= 0 && outline.y0().signum() >= 0
				&& !outline.x1().isMoreThan(WallShape.of(thing.wall()).length());
	}

	/** The frames of one tier of a wall are placed together; any of them stands for the tier. */
	private record TierKey(FrameEditPart any) {

		@Override
		public boolean equals(Object other) {
			return other instanceof TierKey key && key.any.getModel().wall() == any.getModel().wall()
					&& key.any.getModel().tier() == any.getModel().tier();
		}

		@Override
		public int hashCode() {
			return Objects.hash(System.identityHashCode(any.getModel().wall()), any.getModel().tier());
		}
	}
}
