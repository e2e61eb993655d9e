// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.directedit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthParser;
import wainscribe.model.length.LengthSyntaxException;
import wainscribe.model.length.LengthUnit;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.profile.desk.ProfileDesk;

/**
 * Fields laid over the desk in which lengths are typed, in any spelling a carpenter uses. Enter takes them, Escape leaves
 * everything as it is; what is no length is said under the fields and can be mended.
 */
final class DeskField {

	private static final int TEXT_WIDTH = 110;
	private static final int PAD = 4;
	private static final int AWAY = 12;

	private final GraphicalViewer viewer;
	private final LengthUnit unit;
	private final Point where;
	private final Composite box;
	private final List<Text> texts = new ArrayList<>();
	private Label complaint;

	/**
	 * Opens an empty box.
	 *
	 * @param viewer the viewer it lies over
	 * @param desk   unit and colours
	 * @param where  a place on the viewer's control
	 */
	DeskField(GraphicalViewer viewer, ProfileDesk desk, Point where) {
		this.viewer = Objects.requireNonNull(viewer);
		this.unit = desk.session().units();
		this.where = where.getTranslated(AWAY, AWAY);
		box = new Composite((Composite) viewer.getControl(), SWT.BORDER);
		GridLayout layout = new GridLayout(2, false);
		layout.marginWidth = PAD;
		layout.marginHeight = PAD;
		box.setLayout(layout);
	}

	/**
	 * Adds a field.
	 *
	 * @param label what is typed
	 * @param now   its value, null for none
	 */
	void add(String label, Length now) {
		new Label(box, SWT.NONE).setText(label);
		Text text = new Text(box, SWT.BORDER | SWT.SINGLE);
		GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
		data.widthHint = TEXT_WIDTH;
		text.setLayoutData(data);
		text.setText(now == null ? "" : typed(now)); //$NON-NLS-1$
		texts.add(text);
	}

	/** Shows the box and lets it be typed in; what was typed is taken once all of it are lengths. */
	void open(ProfileDesk desk, Consumer<List<Length>> taker) {
		complaint = new Label(box, SWT.WRAP);
		GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1);
		wide.exclude = true;
		complaint.setLayoutData(wide);
		complaint.setForeground(Appearance.colour(desk.colours().guide()));
		for (Text text : texts) {
			text.addListener(SWT.DefaultSelection, event -> take(taker));
			text.addListener(SWT.Traverse, event -> {
				if (event.detail == SWT.TRAVERSE_ESCAPE) {
					event.doit = false;
					close();
				}
			});
			text.addListener(SWT.FocusOut, event -> box.getDisplay().asyncExec(this::closeIfLeft));
		}
		place();
		texts.getFirst().setFocus();
		texts.getFirst().selectAll();
	}

	/** Says what is wrong with what was typed. */
	private void complain(String words) {
		complaint.setText(words);
		((GridData) complaint.getLayoutData()).exclude = false;
		place();
	}

	private void take(Consumer<List<Length>> taker) {
		List<Length> lengths = new ArrayList<>();
		for (Text text : texts) {
			Optional<Length> length = read(text);
			if (length.isEmpty()) {
				return;
			}
			lengths.add(length.get());
		}
		try {
			taker.accept(lengths);
			close();
		} catch (IllegalArgumentException e) {
			complain(e.getMessage());
		}
	}

	private Optional<Length> read(Text text) {
		try {
			return Optional.of(new LengthParser(unit).parse(text.getText()));
		} catch (LengthSyntaxException e) {
			complain(e.getMessage());
			text.setFocus();
			text.selectAll();
			return Optional.empty();
		}
	}

	/** Writes a length so that reading it gives the very same one. */
	private String typed(Length length) {
		String shown = LengthFormat.asShown(length, unit);
		return shown.startsWith("~") ? LengthFormat.asStored(length) : shown; //$NON-NLS-1$
	}

	private void place() {
		box.pack();
		Rectangle area = ((Composite) viewer.getControl()).getClientArea();
		box.setLocation(Math.max(0, Math.min(where.x, area.width - box.getSize().x)),
				Math.max(0, Math.min(where.y, area.height - box.getSize().y)));
		box.moveAbove(null);
	}

	private void closeIfLeft() {
		if (!box.isDisposed() && texts.stream().noneMatch(Text::isFocusControl)) {
			box.dispose();
		}
	}

	private void close() {
		if (!box.isDisposed()) {
			box.dispose();
			if (!viewer.getControl().isDisposed()) {
				viewer.getControl().setFocus();
			}
		}
	}
}
