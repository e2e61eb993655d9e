// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.home;

import java.util.Map;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.viewers.OwnerDrawLabelProvider;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;

import wainscribe.rules.Severity;
import wainscribe.ui.Icon;
import wainscribe.ui.session.HomeProfile;

/** Paints homes and rooms in two lines: the name and the counts of findings, and below how far it is. */
final class HomeRowPainter extends OwnerDrawLabelProvider {

	private static final int SPACE = 4;
	private static final int ICON = 16;
	private static final int QUIET = 165;
	private static final int OPAQUE = 255;

	private final LocalResourceManager resources;

	HomeRowPainter(Control owner) {
		resources = new LocalResourceManager(JFaceResources.getResources(), owner);
	}

	/** The text is painted, yet also set: it is what a screen reader says. */
	@Override
	public void update(ViewerCell cell) {
		cell.setText(HomeRow.of(cell.getElement()).spoken());
		super.update(cell);
	}

	@Override
	public String getToolTipText(Object element) {
		return switch (element) {
			case UnreadableHome home -> home.reason();
			case HomeProfile profile when !profile.fault().isEmpty() -> profile.fault();
			default -> HomeRow.of(element).spoken();
		};
	}

	@Override
	protected void measure(Event event, Object element) {
		int line = event.gc.getFontMetrics().getHeight();
		event.height = 2 * line + 3 * SPACE;
	}

	/** The text set for screen readers must not be seen; background and selection stay the platform's. */
	@Override
	protected void erase(Event event, Object element) {
		event.detail &= ~SWT.FOREGROUND;
	}

	@Override
	protected void paint(Event event, Object element) {
		HomeRow row = HomeRow.of(element);
		GC gc = event.gc;
		int line = gc.getFontMetrics().getHeight();
		int top = event.y + Math.max(0, (event.height - 2 * line - SPACE / 2) / 2);
		gc.drawImage(image(row.icon()), event.x, top + (line - ICON) / 2);
		int left = event.x + ICON + 2 * SPACE;
		int right = counts(gc, row, ((Tree) event.widget).getClientArea().width - 2 * SPACE, top, line);
		Font normal = gc.getFont();
		gc.setFont(row.heavy() ? bold(normal) : normal);
		gc.drawText(fitted(gc, row.name(), right - left), left, top, SWT.DRAW_TRANSPARENT);
		gc.setFont(normal);
		gc.setAlpha(QUIET);
		int whole = ((Tree) event.widget).getClientArea().width - SPACE - left;
		gc.drawText(fitted(gc, row.state(), whole), left, top + line + SPACE / 2, SWT.DRAW_TRANSPARENT);
		gc.setAlpha(OPAQUE);
	}

	/** Paints from the right edge to the left and returns where the name has to end. */
	private int counts(GC gc, HomeRow row, int edge, int top, int line) {
		int x = edge;
		if (row.inOrder()) {
			x -= ICON;
			gc.drawImage(image(Icon.IN_ORDER), x, top + (line - ICON) / 2);
		}
		for (Severity severity : new Severity[] { Severity.ADVICE, Severity.WARNING, Severity.ERROR }) {
			x = count(gc, row.findings().counts(), severity, x, top, line);
		}
		return x - SPACE;
	}

	private int count(GC gc, Map<Severity, Integer> counts, Severity severity, int edge, int top, int line) {
		if (!counts.containsKey(severity)) {
			return edge;
		}
		String number = counts.get(severity).toString();
		Point size = gc.textExtent(number);
		gc.drawText(number, edge - size.x, top, SWT.DRAW_TRANSPARENT);
		int left = edge - size.x - SPACE / 2 - ICON;
		gc.drawImage(image(Icon.of(severity)), left, top + (line - ICON) / 2);
		return left - 2 * SPACE;
	}

	private Image image(Icon icon) {
		return resources.get(icon.descriptor());
	}

	private Font bold(Font font) {
		return resources.get(FontDescriptor.createFrom(font).setStyle(SWT.BOLD));
	}

	private static String fitted(GC gc, String text, int width) {
		String shown = text;
		while (shown.length() > 1 && gc.textExtent(shown + "\u2026").x > width && !(shown.equals(text) && gc.textExtent(text).x <= width)) { //$NON-NLS-1$
			shown = shown.substring(0, shown.offsetByCodePoints(shown.length(), -1));
		}
		return shown.equals(text) ? text : shown.stripTrailing() + "\u2026"; //$NON-NLS-1$
	}
}
