// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.tools;

import java.util.List;
import java.util.Objects;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;

import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.profile.desk.ProfileDesk;

/**
 * Goes from node to node by the keyboard: along the points, along the segments, and from what is selected to what bends it.
 */
public final class PointWalk {

	private final GraphicalViewer viewer;
	private final ProfileDesk desk;

	/** Creates the walk of a viewer. */
	public PointWalk(GraphicalViewer viewer, ProfileDesk desk) {
		this.viewer = Objects.requireNonNull(viewer);
		this.desk = Objects.requireNonNull(desk);
	}

	/** Goes to the next point, or back by -1. */
	public void alongPoints(int step) {
		List<? extends NodeKey> points = all().stream().filter(NodeKey.OfPoint.class::isInstance).toList();
		go(points, step, switch (focus()) {
			case NodeKey.OfPoint(int point) -> point;
			case NodeKey.OfSegment(int segment) -> step > 0 ? segment : segment + 1;
			case NodeKey.OfHandle(int segment, var grip) -> step > 0 ? segment : segment + 1;
			case null -> step > 0 ? -1 : 0;
		});
	}

	/** Goes to the next segment, or back by -1. */
	public void alongSegments(int step) {
		List<? extends NodeKey> segments = all().stream().filter(NodeKey.OfSegment.class::isInstance).toList();
		go(segments, step, switch (focus()) {
			case NodeKey.OfPoint(int point) -> step > 0 ? point - 1 : point;
			case NodeKey.OfSegment(int segment) -> segment;
			case NodeKey.OfHandle(int segment, var grip) -> step > 0 ? segment - 1 : segment + 1;
			case null -> step > 0 ? -1 : 0;
		});
	}

	/** Goes to the next handle that can be seen. */
	public void alongHandles() {
		List<? extends NodeKey> handles = all().stream().filter(NodeKey.OfHandle.class::isInstance).toList();
		NodeKey focus = focus();
		int segment = switch (focus) {
			case NodeKey.OfPoint(int point) -> point;
			case NodeKey.OfSegment(int number) -> number;
			case NodeKey.OfHandle handle -> -1;
			case null -> -1;
		};
		int at = handles.indexOf(focus);
		for (int i = 0; i < handles.size() && at < 0; i++) {
			if (((NodeKey.OfHandle) handles.get(i)).segment() >= segment) {
				at = i - 1;
				break;
			}
		}
		go(handles, 1, at);
	}

	private void go(List<? extends NodeKey> along, int step, int from) {
		if (!along.isEmpty()) {
			NodeKey next = along.get(Math.floorMod(from + step, along.size()));
			if (viewer.getEditPartRegistry().get(next) instanceof EditPart part) {
				viewer.select(part);
				viewer.reveal(part);
			}
		}
	}

	private List<NodeKey> all() {
		return desk.nodes().all();
	}

	/** Returns what was selected last; null for nothing. */
	private NodeKey focus() {
		List<?> selected = viewer.getSelectedEditParts();
		return !selected.isEmpty() && ((EditPart) selected.getLast()).getModel() instanceof NodeKey key ? key : null;
	}
}
