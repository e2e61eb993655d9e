// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.figures;

import java.util.Objects;
import java.util.function.Supplier;

import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.FreeformLayout;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

import wainscribe.ui.drafting.appearance.TableColours;

/** The desk: grid, wall line, backdrop and section. Takes the place that is meant for it, not just what lies on it. */
public final class DeskFigure extends FreeformLayer {

	private final Supplier<Rectangle> area;
	private DeskPicture picture = DeskPicture.EMPTY;
	private BackdropPicture backdrop = BackdropPicture.NONE;
	private TableColours colours = TableColours.light();

	/**
	 * Creates a desk.
	 *
	 * @param area says which pixels it takes
	 */
	public DeskFigure(Supplier<Rectangle> area) {
		this.area = Objects.requireNonNull(area);
		setLayoutManager(new FreeformLayout());
	}

	/** Shows something else. */
	public void show(DeskPicture other, BackdropPicture behind, TableColours tones) {
		picture = Objects.requireNonNull(other);
		backdrop = Objects.requireNonNull(behind);
		colours = Objects.requireNonNull(tones);
		fireExtentChanged();
		repaint();
	}

	@Override
	public Rectangle getFreeformExtent() {
		// the superclass is asked too: it notes that its extent was read and tells when it changes
		super.getFreeformExtent();
		return area.get();
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		Rectangle seen = graphics.getClip(new Rectangle());
		backdrop.paint(graphics);
		new GridPainter(graphics, colours).paint(picture.fine(), picture.numbered(), seen);
		new SectionPainter(graphics, colours).paint(picture, seen, backdrop.image() != null);
	}
}
