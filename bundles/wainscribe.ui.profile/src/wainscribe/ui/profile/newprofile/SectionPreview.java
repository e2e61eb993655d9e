// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.newprofile;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionBox;
import wainscribe.profile.section.Segment;
import wainscribe.profile.section.Spot;
import wainscribe.ui.SpokenName;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.appearance.TableColours;

/** A small picture of a section, as large as its canvas allows. */
public final class SectionPreview extends Canvas {

	private static final int EDGE = 18;
	private static final double CHORDS = 0.2;

	private ProfileSection section = ProfileSection.EMPTY;

	/**
	 * Creates an empty picture.
	 *
	 * @param parent where it lies
	 * @param name   what a screen reader says of it
	 */
	public SectionPreview(Composite parent, String name) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
		addListener(SWT.Paint, this::paint);
		SpokenName.give(this, name);
	}

	/** Shows another section. */
	public void show(ProfileSection other) {
		section = other;
		redraw();
	}

	/** Returns what is shown. */
	public ProfileSection section() {
		return section;
	}

	private void paint(Event event) {
		TableColours colours = Appearance.of(getParent());
		Rectangle area = getClientArea();
		event.gc.setBackground(Appearance.colour(colours.drawing().ground()));
		event.gc.fillRectangle(area);
		SectionBox box = section.box();
		double high = box.width().approximateMillimetres();
		double wide = box.projection().approximateMillimetres();
		if (high <= 0 || wide <= 0) {
			return;
		}
		double scale = Math.min((area.width - 2.0 * EDGE) / wide, (area.height - 2.0 * EDGE) / high);
		Path path = new Path(getDisplay());
		try {
			trace(path, (area.width - wide * scale) / 2 - box.low().y().approximateMillimetres() * scale,
					(area.height + high * scale) / 2 + box.low().x().approximateMillimetres() * scale, scale);
			event.gc.setAntialias(SWT.ON);
			event.gc.setBackground(Appearance.colour(colours.drawing().trim().mixed(colours.drawing().accent(), 0.22)));
			event.gc.fillPath(path);
			event.gc.setForeground(Appearance.colour(colours.drawing().ink()));
			event.gc.setLineWidth(2);
			event.gc.drawPath(path);
		} finally {
			path.dispose();
		}
	}

	private void trace(Path path, double left, double bottom, double scale) {
		Spot start = section.outline().getFirst().start().spot();
		path.moveTo((float) (left + start.y() * scale), (float) (bottom - start.x() * scale));
		for (Segment segment : section.outline()) {
			for (Spot spot : segment.chords(CHORDS / scale)) {
				path.lineTo((float) (left + spot.y() * scale), (float) (bottom - spot.x() * scale));
			}
		}
		path.close();
	}
}
