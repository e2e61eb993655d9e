// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.directedit;

import java.util.Optional;

import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import wainscribe.commands.EditCommand;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthParser;
import wainscribe.model.length.LengthSyntaxException;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.history.ModelCommand;
import wainscribe.ui.elevation.table.DrawingTable;

/**
 * A field laid over the drawing in which a number is typed, in any spelling a carpenter uses. Enter takes it, Escape leaves
 * everything as it is; what is no length is said under the field and can be mended.
 */
final class NumberField {

	private static final int TEXT_WIDTH = 110;
	private static final int PAD = 4;

	private final GraphicalViewer viewer;
	private final DrawingTable table;
	private final TypedNumber number;
	private final Composite box;
	private final Text text;
	private final Label complaint;
	private final Rectangle where;

	/**
	 * Opens a field.
	 *
	 * @param viewer the viewer it lies over
	 * @param table  the drawing table
	 * @param number what is typed
	 * @param where  pixels of the number on the viewer's control
	 */
	NumberField(GraphicalViewer viewer, DrawingTable table, TypedNumber number, Rectangle where) {
		this.viewer = viewer;
		this.table = table;
		this.number = number;
		this.where = where;
		box = new Composite((Composite) viewer.getControl(), SWT.BORDER);
		GridLayout layout = new GridLayout(2, false);
		layout.marginWidth = PAD;
		layout.marginHeight = PAD;
		box.setLayout(layout);
		new Label(box, SWT.NONE).setText(number.label());
		text = new Text(box, SWT.BORDER | SWT.SINGLE);
		GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
		data.widthHint = TEXT_WIDTH;
		text.setLayoutData(data);
		complaint = new Label(box, SWT.WRAP);
		GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1);
		wide.exclude = true;
		complaint.setLayoutData(wide);
		complaint.setForeground(Appearance.colour(table.colours().guide()));
		text.setText(number.now() == null ? "" : LengthFormat.asMeasured(number.now(), table.units())); //$NON-NLS-1$
		text.selectAll();
		text.addListener(SWT.DefaultSelection, event -> take());
		text.addListener(SWT.Traverse, event -> {
			if (event.detail == SWT.TRAVERSE_ESCAPE) {
				event.doit = false;
				close();
			}
		});
		text.addListener(SWT.FocusOut, event -> box.getDisplay().asyncExec(this::close));
		place();
		text.setFocus();
	}

	private void place() {
		box.pack();
		org.eclipse.swt.graphics.Rectangle area = ((Composite) viewer.getControl()).getClientArea();
		int x = Math.max(0, Math.min(where.x, area.width - box.getSize().x));
		int y = Math.max(0, Math.min(where.y, area.height - box.getSize().y));
		box.setLocation(x, y);
		box.moveAbove(null);
	}

	private void take() {
		Optional<Length> typed = read();
		if (typed.isEmpty()) {
			return;
		}
		close();
		EditCommand command = number.change().apply(typed.get());
		if (command.canExecute()) {
			viewer.getEditDomain().getCommandStack().execute(new ModelCommand(command));
		}
	}

	private Optional<Length> read() {
		try {
			return Optional.of(new LengthParser(table.units()).parse(text.getText()));
		} catch (LengthSyntaxException e) {
			complaint.setText(e.getMessage());
			((GridData) complaint.getLayoutData()).exclude = false;
			place();
			return Optional.empty();
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
