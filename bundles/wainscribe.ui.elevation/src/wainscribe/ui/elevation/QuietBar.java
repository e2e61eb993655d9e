// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation;

import java.util.List;
import java.util.Objects;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import wainscribe.layout.PlainStretch;
import wainscribe.ui.SpokenName;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.TableListener;

/**
 * A line under the drawing that says what the layout could not do. While all is well it is empty but keeps its place, so that the
 * drawing stays still when a drag makes it speak.
 */
final class QuietBar extends Canvas implements TableListener {

	private static final int PAD_X = 10;
	private static final int PAD_Y = 5;

	private final DrawingTable table;
	private String text = ""; //$NON-NLS-1$

	QuietBar(Composite parent, DrawingTable table) {
		super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
		this.table = Objects.requireNonNull(table);
		setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, false));
		addListener(SWT.Paint, this::paint);
		SpokenName.give(this, Messages.QuietBar_Name);
		table.addListener(this);
		addListener(SWT.Dispose, event -> table.removeListener(this));
		drawingsChanged();
	}

	@Override
	public void drawingsChanged() {
		say(sentence());
	}

	@Override
	public void trialShown() {
		say(sentence());
	}

	@Override
	public void roomReplaced() {
		say(sentence());
	}

	/** Returns what it says; empty while all is well. */
	String text() {
		return text;
	}

	private String sentence() {
		List<PlainStretch> plain = table.design().layout().infeasible();
		if (table.problem().isPresent()) {
			return table.problem().get();
		}
		if (plain.isEmpty()) {
			return ""; //$NON-NLS-1$
		}
		PlainStretch first = plain.getFirst();
		String sentence = first.nearest().isEmpty() ? first.reason() : first.reason() + ' ' + first.nearest();
		return plain.size() == 1 ? sentence : NLS.bind(Messages.QuietBar_AndMore, sentence, plain.size() - 1);
	}

	private void say(String sentence) {
		if (!sentence.equals(text)) {
			text = sentence;
			setToolTipText(sentence.isEmpty() ? null : sentence);
			getParent().layout(true);
		}
		redraw();
	}

	/** A long sentence goes on in a second line. */
	@Override
	public Point computeSize(int width, int height, boolean changed) {
		TextLayout lines = lines(width);
		try {
			return new Point(width == SWT.DEFAULT ? 0 : width, lines.getBounds().height + 2 * PAD_Y);
		} finally {
			lines.dispose();
		}
	}

	private void paint(Event event) {
		Rectangle area = getClientArea();
		event.gc.setBackground(Appearance.colour(text.isEmpty() ? table.colours().ruler() : table.colours().bar()));
		event.gc.fillRectangle(area);
		event.gc.setForeground(Appearance.colour(table.colours().barText()));
		TextLayout lines = lines(area.width);
		try {
			lines.draw(event.gc, PAD_X, PAD_Y);
		} finally {
			lines.dispose();
		}
	}

	private TextLayout lines(int width) {
		TextLayout lines = new TextLayout(getDisplay());
		lines.setFont(getFont());
		lines.setText(text);
		lines.setWidth(width == SWT.DEFAULT ? SWT.DEFAULT : Math.max(1, width - 2 * PAD_X));
		return lines;
	}
}
