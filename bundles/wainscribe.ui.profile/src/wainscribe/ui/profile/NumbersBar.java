// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile;

import java.util.Objects;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.profile.desk.DeskListener;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.words.SectionNumbers;

/**
 * Two lines under the desk: the numbers of the section as it is drawn, and what is wrong with it. The numbers are then those
 * of the last sound section; the second line keeps its place while all is well, so that the drawing stays still.
 */
final class NumbersBar extends Canvas implements DeskListener {

	private static final int PAD_X = 10;
	private static final int PAD_Y = 4;

	private final ProfileDesk desk;

	NumbersBar(Composite parent, ProfileDesk desk) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
		this.desk = Objects.requireNonNull(desk);
		setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, false));
		addListener(SWT.Paint, this::paint);
		getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = numbers() + ' ' + fault();
			}
		});
		desk.addListener(this);
		addListener(SWT.Dispose, event -> desk.removeListener(this));
		deskChanged();
	}

	@Override
	public void deskChanged() {
		if (!isDisposed()) {
			String fault = fault();
			setToolTipText(fault.isEmpty() ? numbers() : fault);
			redraw();
		}
	}

	/** Returns the numbers. */
	String numbers() {
		String line = SectionNumbers.line(desk.session());
		return desk.session().faults().isEmpty() ? line : NLS.bind(Messages.NumbersBar_LastSound, line);
	}

	/** Returns what is wrong; empty while all is well. */
	String fault() {
		return desk.session().faults().isEmpty() ? "" : SectionNumbers.sentence(desk.session().faults().getFirst()); //$NON-NLS-1$
	}

	@Override
	public Point computeSize(int width, int height, boolean changed) {
		TextLayout line = line("X", SWT.DEFAULT); //$NON-NLS-1$
		try {
			return new Point(width == SWT.DEFAULT ? 0 : width, 2 * (line.getBounds().height + 2 * PAD_Y));
		} finally {
			line.dispose();
		}
	}

	private void paint(Event event) {
		Rectangle area = getClientArea();
		boolean wrong = !fault().isEmpty();
		int half = area.height / 2;
		event.gc.setBackground(Appearance.colour(desk.colours().ruler()));
		event.gc.fillRectangle(area);
		event.gc.setForeground(Appearance.colour(desk.colours().rulerInk()));
		draw(event, numbers(), 0);
		if (wrong) {
			event.gc.setBackground(Appearance.colour(desk.colours().bar()));
			event.gc.fillRectangle(0, half, area.width, area.height - half);
			event.gc.setForeground(Appearance.colour(desk.colours().barText()));
			draw(event, fault(), half);
		}
	}

	private void draw(Event event, String text, int y) {
		TextLayout line = line(text, SWT.DEFAULT);
		try {
			line.draw(event.gc, PAD_X, y + PAD_Y);
		} finally {
			line.dispose();
		}
	}

	private TextLayout line(String text, int width) {
		TextLayout line = new TextLayout(getDisplay());
		line.setFont(getFont());
		line.setText(text);
		line.setWidth(width);
		return line;
	}
}
