// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation;

import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import wainscribe.ui.elevation.rulers.Ruler;

/**
 * Foretells the size of the canvas in a new part. The workbench lays a part out only after it was made; what is drawn before that
 * for a wrong size has to be drawn again. A wrong guess does no harm beyond that.
 */
final class FirstSize {

	private FirstSize() {
	}

	/**
	 * Returns the size that the canvas is about to have, as far as can be told; empty if nothing can.
	 *
	 * @param part the part's own composite, with its controls in one column without space between
	 * @param area the row that takes what the others leave, with rulers beside the canvas
	 */
	static Dimension of(Composite part, Composite area) {
		// the part's own size says nothing yet: a tool bar packs what it is in
		Composite around = part.getParent();
		while (around.getClientArea().isEmpty() && around.getParent() != null) {
			around = around.getParent();
		}
		Rectangle whole = around.getClientArea();
		int height = whole.height;
		for (Control row : part.getChildren()) {
			if (row != area && row.getLayoutData() instanceof GridData data && !data.exclude) {
				height -= data.heightHint == SWT.DEFAULT ? row.computeSize(whole.width, SWT.DEFAULT).y : data.heightHint;
			}
		}
		return new Dimension(Math.max(0, whole.width - Ruler.BREADTH), Math.max(0, height - Ruler.BREADTH));
	}
}
