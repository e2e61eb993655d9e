// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.actions;

import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.ui.handlers.HandlerUtil;

import wainscribe.commands.AddLineCommand;
import wainscribe.model.Axis;
import wainscribe.model.Guide;
import wainscribe.model.ReferenceLine;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.WallShape;
import wainscribe.ui.drafting.history.ModelCommand;
import wainscribe.ui.elevation.ElevationEditor;
import wainscribe.ui.elevation.directedit.DimensionEdit;
import wainscribe.ui.elevation.editparts.LineEditPart;
import wainscribe.ui.elevation.editparts.ThingEditPart;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.LineKey;
import wainscribe.ui.elevation.table.Overlay;
import wainscribe.ui.elevation.tools.WallWalk;

/**
 * Lays an {@code axis}, a {@code plumb} or a {@code level} guide without the mouse: through the middle or along the upper edge
 * of what is selected, else in the middle of the wall. Its number is ready to be typed.
 */
public final class LineHandler extends AbstractHandler implements IExecutableExtension {

	private String task = ""; //$NON-NLS-1$

	@Override
	public void setInitializationData(IConfigurationElement config, String property, Object data) {
		task = String.valueOf(data);
	}

	@Override
	public Object execute(ExecutionEvent event) {
		if (HandlerUtil.getActiveEditor(event) instanceof ElevationEditor editor) {
			WallWalk walk = (WallWalk) editor.getAdapter(WallWalk.class);
			walk.wall().ifPresent(wall -> lay(editor, wall));
		}
		return null;
	}

	private void lay(ElevationEditor editor, Wall wall) {
		GraphicalViewer viewer = editor.getGraphicalViewer();
		DrawingTable table = (DrawingTable) editor.getAdapter(DrawingTable.class);
		Optional<Outline> selected = viewer.getFocusEditPart() instanceof ThingEditPart thing ? thing.outline() : Optional.empty();
		WallShape shape = WallShape.of(wall);
		Outline about = selected.orElse(new Outline(Length.ZERO, Length.ZERO, shape.length(), shape.ceilingLeft().dividedBy(2)));
		Length middle = about.x0().plus(about.width().dividedBy(2));
		AddLineCommand command = switch (task) {
			case "axis" -> AddLineCommand.axis(wall, at(WainscribeFactory.eINSTANCE.createAxis(), middle)); //$NON-NLS-1$
			case "plumb" -> AddLineCommand.plumb(wall, at(WainscribeFactory.eINSTANCE.createGuide(), middle)); //$NON-NLS-1$
			case "level" -> AddLineCommand.level(wall.getRoom(), at(WainscribeFactory.eINSTANCE.createGuide(), about.y1())); //$NON-NLS-1$
			default -> throw new IllegalStateException("no such line: " + task); //$NON-NLS-1$
		};
		table.overlays().show("axis".equals(task) ? Overlay.AXES : Overlay.GUIDES, true); //$NON-NLS-1$
		viewer.getEditDomain().getCommandStack().execute(new ModelCommand(command));
		ReferenceLine line = (ReferenceLine) command.getResult().iterator().next();
		if (viewer.getEditPartRegistry().get(new LineKey(wall, line)) instanceof LineEditPart part) {
			viewer.flush();
			viewer.select(part);
			viewer.reveal(part);
			DimensionEdit.of(part).ifPresent(DimensionEdit::open);
		}
	}

	private static Axis at(Axis axis, Length at) {
		axis.setAt(at);
		return axis;
	}

	private static Guide at(Guide guide, Length at) {
		guide.setAt(at);
		return guide;
	}
}
