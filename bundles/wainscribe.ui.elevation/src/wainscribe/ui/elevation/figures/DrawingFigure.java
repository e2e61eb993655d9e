// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.figures;

import java.util.HashSet;
import java.util.Set;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;

import wainscribe.drawing.Drawing;
import wainscribe.drawing.Shape;
import wainscribe.drawing.StyleTable;
import wainscribe.ui.drafting.painting.Letters;
import wainscribe.ui.elevation.painting.DrawingPainter;
import wainscribe.ui.elevation.table.Projection;

/** Shows a neutral drawing. Given another one, it repaints only where the two differ. */
public final class DrawingFigure extends Figure {

	private static final int SLACK = 4;

	private final Letters letters;
	private final double paper;
	private Drawing drawing;
	private Projection projection;
	private StyleTable styles;

	/**
	 * Creates an empty figure.
	 *
	 * @param letters fonts
	 * @param paper   pixels for one millimetre of paper
	 */
	public DrawingFigure(Letters letters, double paper) {
		this.letters = letters;
		this.paper = paper;
	}

	/**
	 * Shows a drawing.
	 *
	 * @param other what to show
	 * @param place where the wall lies
	 * @param looks looks of the roles
	 */
	public void show(Drawing other, Projection place, StyleTable looks) {
		Drawing before = drawing;
		boolean moved = !place.equals(projection) || looks != styles;
		drawing = other;
		projection = place;
		styles = looks;
		setBounds(place.pixels(other.extent()));
		if (moved || before == null) {
			repaint();
		} else if (before != other) {
			damage(before, other).parts().forEach(this::repaint);
		}
	}

	/** Returns the pixels in which two drawings differ. */
	private Patches damage(Drawing before, Drawing after) {
		Set<Shape> gone = new HashSet<>();
		before.shapes().forEach(gone::add);
		Patches damage = new Patches();
		after.shapes().filter(shape -> !gone.remove(shape)).forEach(shape -> cover(damage, shape));
		gone.forEach(shape -> cover(damage, shape));
		return damage;
	}

	private void cover(Patches damage, Shape shape) {
		damage.add(projection.pixels(shape.bounds()).expand(SLACK, SLACK));
	}

	/** Tells whether a drawing is what is shown. */
	public boolean shows(Drawing other) {
		return drawing == other;
	}

	@Override
	protected void paintFigure(Graphics graphics) {
		if (drawing != null) {
			new DrawingPainter(graphics, projection, styles, letters, paper).paint(drawing);
		}
	}
}
