// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.tools;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.KeyHandler;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.commands.CompoundCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

import wainscribe.model.length.Length;
import wainscribe.ui.elevation.directedit.DimensionEdit;
import wainscribe.ui.elevation.editparts.ThingEditPart;
import wainscribe.ui.elevation.policies.NudgeRequest;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.TableZoom;

/**
 * The keyboard on the drawing table. Arrows move what is selected by one tape mark, with Ctrl or Shift by ten; Tab goes to
 * the next thing of the wall; Page keys go from wall to wall, Home and End to the first and last; Enter types the first
 * number of a thing; + and - zoom, 0 shows the room; W and N widen and narrow the gap, U and D the one above and below frames.
 */
public final class TableKeys extends KeyHandler {

	private static final int MANY = 10;

	private final GraphicalViewer viewer;
	private final DrawingTable table;
	private final TableZoom zoom;
	private final WallWalk walk;

	/** Creates the keyboard of a viewer. */
	public TableKeys(GraphicalViewer viewer, DrawingTable table, TableZoom zoom, WallWalk walk) {
		this.viewer = viewer;
		this.table = table;
		this.zoom = zoom;
		this.walk = walk;
	}

	@Override
	public boolean keyPressed(KeyEvent event) {
		int times = (event.stateMask & (SWT.MOD1 | SWT.SHIFT)) != 0 ? MANY : 1;
		Length step = table.units().tapeMark().times(times);
		return switch (event.keyCode) {
			case SWT.ARROW_LEFT -> nudge(step.negated(), Length.ZERO);
			case SWT.ARROW_RIGHT -> nudge(step, Length.ZERO);
			case SWT.ARROW_UP -> nudge(Length.ZERO, step);
			case SWT.ARROW_DOWN -> nudge(Length.ZERO, step.negated());
			case SWT.PAGE_DOWN -> done(() -> walk.goBy(1));
			case SWT.PAGE_UP -> done(() -> walk.goBy(-1));
			case SWT.HOME -> done(() -> walk.goTo(0));
			case SWT.END -> done(() -> walk.goTo(table.walls().size() - 1));
			case SWT.CR, SWT.KEYPAD_CR, SWT.F2 -> type();
			case SWT.KEYPAD_ADD -> done(zoom::zoomIn);
			case SWT.KEYPAD_SUBTRACT -> done(zoom::zoomOut);
			case 'w', 'n', 'u', 'd' -> GapKeys.press(viewer.getEditDomain(), table, event) || super.keyPressed(event);
			default -> character(event);
		};
	}

	private boolean character(KeyEvent event) {
		return switch (event.character) {
			case '+', '=' -> done(zoom::zoomIn);
			case '-' -> done(zoom::zoomOut);
			case '0' -> done(zoom::fitRoom);
			default -> super.keyPressed(event);
		};
	}

	private boolean nudge(Length dx, Length dy) {
		List<Command> commands = new ArrayList<>();
		for (Object selected : viewer.getSelectedEditParts()) {
			Command command = ((EditPart) selected).getCommand(new NudgeRequest(dx, dy));
			if (command != null && command.canExecute()) {
				commands.add(command);
			}
		}
		if (commands.isEmpty()) {
			return false;
		}
		CompoundCommand all = new CompoundCommand(commands.getFirst().getLabel());
		commands.forEach(all::add);
		viewer.getEditDomain().getCommandStack().execute(all);
		return true;
	}

	private boolean type() {
		if (viewer.getFocusEditPart() instanceof ThingEditPart thing) {
			DimensionEdit.of(thing).ifPresent(DimensionEdit::open);
			return true;
		}
		return false;
	}

	private static boolean done(Runnable task) {
		task.run();
		return true;
	}
}
