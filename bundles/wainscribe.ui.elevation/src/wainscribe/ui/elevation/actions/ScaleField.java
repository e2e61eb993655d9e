// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.actions;

import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.jface.action.ControlContribution;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import wainscribe.ui.SpokenName;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.table.TableZoom;

/** Shows the scale as on paper, and takes another one. */
public final class ScaleField extends ControlContribution {

	private static final Pattern SCALE = Pattern.compile("\\s*(?:1\\s*[:/])?\\s*(\\d{1,4})\\s*"); //$NON-NLS-1$
	private static final int WIDTH = 84;

	private final TableZoom zoom;
	private Combo combo;

	/** Creates the field of a zoom. */
	public ScaleField(TableZoom zoom) {
		super("wainscribe.ui.elevation.scale"); //$NON-NLS-1$
		this.zoom = Objects.requireNonNull(zoom);
		zoom.addListener(this::follow);
	}

	@Override
	protected Control createControl(Composite parent) {
		combo = new Combo(parent, SWT.DROP_DOWN);
		TableZoom.SCALES.forEach(scale -> combo.add("1:" + scale)); //$NON-NLS-1$
		combo.setToolTipText(Messages.ScaleField_Tip);
		SpokenName.give(combo, Messages.ScaleField_Tip);
		combo.setText(zoom.text());
		combo.setVisibleItemCount(TableZoom.SCALES.size());
		combo.addListener(SWT.Selection, event -> take());
		combo.addListener(SWT.DefaultSelection, event -> take());
		combo.addListener(SWT.FocusOut, event -> follow());
		return combo;
	}

	@Override
	protected int computeWidth(Control control) {
		return Math.max(WIDTH, control.computeSize(SWT.DEFAULT, SWT.DEFAULT, true).x);
	}

	private void take() {
		Matcher matcher = SCALE.matcher(combo.getText());
		if (matcher.matches() && Integer.parseInt(matcher.group(1)) > 0) {
			zoom.zoomTo(Integer.parseInt(matcher.group(1)));
		}
		follow();
	}

	private void follow() {
		if (combo != null && !combo.isDisposed() && !combo.getText().equals(zoom.text())) {
			combo.setText(zoom.text());
		}
	}
}
