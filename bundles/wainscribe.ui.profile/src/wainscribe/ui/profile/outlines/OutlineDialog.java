// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.outlines;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

import wainscribe.model.length.LengthUnit;
import wainscribe.profile.imported.SectionImport;
import wainscribe.profile.imported.SectionImportException;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionBox;
import wainscribe.profile.section.SectionCheck;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.newprofile.SectionPreview;
import wainscribe.ui.profile.words.NodeWords;

/** Asks for the unit of a drawing, and shows how large its section would be. */
public final class OutlineDialog extends TitleAreaDialog {

	private static final int PREVIEW = 260;

	private final Path file;
	private final LengthUnit unit;
	private Combo units;
	private Label size;
	private SectionPreview preview;
	private ProfileSection section = ProfileSection.EMPTY;

	/**
	 * Creates the dialog.
	 *
	 * @param shell it lies over
	 * @param file  the drawing
	 * @param unit  in which the size is shown
	 */
	public OutlineDialog(Shell shell, Path file, LengthUnit unit) {
		super(shell);
		this.file = Objects.requireNonNull(file);
		this.unit = Objects.requireNonNull(unit);
		setHelpAvailable(false);
		setShellStyle(getShellStyle() | SWT.RESIZE);
	}

	/** Returns what was read. */
	public ProfileSection section() {
		return section;
	}

	@Override
	protected void configureShell(Shell shell) {
		super.configureShell(shell);
		shell.setText(Messages.ImportOutline_Title);
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		Composite area = (Composite) super.createDialogArea(parent);
		Composite page = new Composite(area, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(2).spacing(8, 8).margins(12, 12).applyTo(page);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(page);
		new Label(page, SWT.NONE).setText(Messages.OutlineDialog_Unit);
		units = new Combo(page, SWT.READ_ONLY | SWT.DROP_DOWN);
		for (DrawingUnit known : DrawingUnit.values()) {
			units.add(known.words());
		}
		units.select((isSvg() ? DrawingUnit.PIXEL : unit == LengthUnit.INCH ? DrawingUnit.INCH : DrawingUnit.MILLIMETRE).ordinal());
		units.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> read()));
		new Label(page, SWT.NONE).setText(Messages.OutlineDialog_Size);
		size = new Label(page, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(size);
		preview = new SectionPreview(page, Messages.NewProfilePage_Preview);
		GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(PREVIEW, PREVIEW).applyTo(preview);
		setTitle(file.getFileName().toString());
		return area;
	}

	@Override
	protected void createButtonsForButtonBar(Composite parent) {
		createButton(parent, IDialogConstants.OK_ID, Messages.OutlineDialog_Take, true);
		createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
		read();
	}

	/** Reads the drawing in the chosen unit. What cannot be read is refused; a faulty section can be taken and mended. */
	private void read() {
		try {
			section = new SectionImport(DrawingUnit.values()[units.getSelectionIndex()].millimetres()).read(file);
			SectionBox box = section.box();
			size.setText(NLS.bind(Messages.OutlineDialog_Measures, NodeWords.measured(box.width().approximateMillimetres(), unit),
					NodeWords.measured(box.projection().approximateMillimetres(), unit)));
			setErrorMessage(null);
			String fault = new SectionCheck().firstFault(section).orElse(null);
			setMessage(fault == null ? Messages.OutlineDialog_Sound : NLS.bind(Messages.OutlineDialog_ToMend, fault),
					fault == null ? IMessageProvider.NONE : IMessageProvider.WARNING);
		} catch (SectionImportException e) {
			section = ProfileSection.EMPTY;
			size.setText(""); //$NON-NLS-1$
			setErrorMessage(e.getLocalizedMessage());
		}
		preview.show(section);
		getButton(IDialogConstants.OK_ID).setEnabled(!section.face().isEmpty());
	}

	private boolean isSvg() {
		return file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".svg"); //$NON-NLS-1$
	}
}
