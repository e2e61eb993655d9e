// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.figures;

import java.util.Objects;
import java.util.function.Supplier;

import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.FreeformLayout;
import org.eclipse.draw2d.geometry.Rectangle;

/** Holds the walls. Takes the place that was arranged for them, not just what they fill, so that nothing shifts by itself. */
public final class StripLayer extends FreeformLayer {

	private final Supplier<Rectangle> area;

	/**
	 * Creates a layer.
	 *
	 * @param area says which pixels it takes
	 */
	public StripLayer(Supplier<Rectangle> area) {
		this.area = Objects.requireNonNull(area);
		setLayoutManager(new FreeformLayout());
	}

	@Override
	public Rectangle getFreeformExtent() {
		// the superclass is asked too: it notes that its extent was read and tells when it changes
		super.getFreeformExtent();
		return area.get();
	}
}
