// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.figures;

import org.eclipse.draw2d.Figure;
import org.eclipse.swt.graphics.Color;

/** Anything that can be taken hold of: it knows whether it is selected and whether the pointer is on it. */
public abstract class NodeFigure extends Figure {

	private Color mark;
	private Color ground;
	private boolean selected;
	private boolean hovered;

	/** Sets the colours. */
	public void setColours(Color marked, Color below) {
		mark = marked;
		ground = below;
		repaint();
	}

	/** Shows it as selected or not. */
	public void setSelected(boolean on) {
		if (selected != on) {
			selected = on;
			repaint();
		}
	}

	/** Shows it under the pointer or not. */
	public void setHovered(boolean on) {
		if (hovered != on) {
			hovered = on;
			repaint();
		}
	}

	/** Tells whether it is selected. */
	public final boolean isSelected() {
		return selected;
	}

	final boolean isHovered() {
		return hovered;
	}

	final Color mark() {
		return mark;
	}

	final Color ground() {
		return ground;
	}
}
