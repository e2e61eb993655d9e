// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.treatment;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CheckboxTableViewer;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;

import wainscribe.commands.TreatmentPart;
import wainscribe.ui.SpokenName;
import wainscribe.ui.session.RoomSession;

/** Asks to which rooms which decisions of a room are copied. */
final class CopyTreatmentPage extends WizardPage {

	private final List<RoomSession> others;
	private final Map<TreatmentPart, Button> parts = new EnumMap<>(TreatmentPart.class);
	private CheckboxTableViewer rooms;

	CopyTreatmentPage(RoomSession source) {
		super("treatment", Messages.CopyTreatmentPage_Title, null); //$NON-NLS-1$
		others = source.homeSession().rooms().stream().filter(room -> room != source).toList();
		setDescription(NLS.bind(Messages.CopyTreatmentPage_Description, source.room().getName()));
	}

	@Override
	public void createControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(2).spacing(16, 8).margins(12, 12).applyTo(page);
		createRooms(page);
		Group group = new Group(page, SWT.NONE);
		group.setText(Messages.CopyTreatmentPage_Parts);
		GridLayoutFactory.swtDefaults().margins(10, 10).applyTo(group);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(group);
		for (TreatmentPart part : TreatmentPart.values()) {
			Button button = new Button(group, SWT.CHECK);
			button.setText(PartWords.of(part));
			button.setSelection(true);
			button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> validate(true)));
			parts.put(part, button);
		}
		Dialog.applyDialogFont(page);
		setControl(page);
		validate(false);
	}

	private void createRooms(Composite page) {
		Composite column = new Composite(page, SWT.NONE);
		GridLayoutFactory.fillDefaults().applyTo(column);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(column);
		new Label(column, SWT.NONE).setText(Messages.CopyTreatmentPage_Rooms);
		rooms = CheckboxTableViewer.newCheckList(column, SWT.BORDER | SWT.V_SCROLL);
		rooms.setContentProvider(ArrayContentProvider.getInstance());
		rooms.setLabelProvider(LabelProvider.createTextProvider(room -> ((RoomSession) room).room().getName()));
		rooms.setInput(others);
		rooms.addCheckStateListener(event -> validate(true));
		SpokenName.give(rooms.getTable(), Messages.CopyTreatmentPage_Rooms);
		GridDataFactory.fillDefaults().grab(true, true).hint(240, 180).applyTo(rooms.getTable());
	}

	/** Returns the rooms chosen, in the order of the home. */
	List<RoomSession> chosenRooms() {
		return others.stream().filter(rooms::getChecked).toList();
	}

	/** Returns the parts chosen. */
	Set<TreatmentPart> chosenParts() {
		Set<TreatmentPart> chosen = EnumSet.noneOf(TreatmentPart.class);
		Arrays.stream(TreatmentPart.values()).filter(part -> parts.get(part).getSelection()).forEach(chosen::add);
		return chosen;
	}

	/** What is missing is said only after something was chosen. */
	private void validate(boolean say) {
		String problem = problem();
		setErrorMessage(say || others.isEmpty() ? problem : null);
		setPageComplete(problem == null);
	}

	private String problem() {
		if (others.isEmpty()) {
			return Messages.CopyTreatmentPage_OnlyRoom;
		}
		if (chosenRooms().isEmpty()) {
			return Messages.CopyTreatmentPage_NoRoom;
		}
		return chosenParts().isEmpty() ? Messages.CopyTreatmentPage_NoPart : null;
	}
}
