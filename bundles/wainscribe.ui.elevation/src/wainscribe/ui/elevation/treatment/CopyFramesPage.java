// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.treatment;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

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

import wainscribe.layout.placing.FramePlacing;
import wainscribe.layout.placing.Start;
import wainscribe.model.Wall;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.ui.SpokenName;
import wainscribe.ui.elevation.words.ElementText;
import wainscribe.ui.session.RoomSession;

/** Asks to which walls the frames of a wall are copied, and says at each wall whether they fit there. */
final class CopyFramesPage extends WizardPage {

	private final RoomSession session;
	private final Wall source;
	private final List<Outline> frames;
	private CheckboxTableViewer walls;
	private Button fromMiddle;

	CopyFramesPage(RoomSession session, Wall source) {
		super("frames", Messages.CopyFramesPage_Title, null); //$NON-NLS-1$
		this.session = session;
		this.source = source;
		this.frames = source.getPlacedFrames().stream().map(Outlines::of).toList();
		setDescription(NLS.bind(Messages.CopyFramesPage_Description, Objects.requireNonNullElse(source.getName(), ""))); //$NON-NLS-1$
	}

	@Override
	public void createControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().spacing(8, 8).margins(12, 12).applyTo(page);
		new Label(page, SWT.NONE).setText(Messages.CopyFramesPage_Walls);
		walls = CheckboxTableViewer.newCheckList(page, SWT.BORDER | SWT.V_SCROLL);
		walls.setContentProvider(ArrayContentProvider.getInstance());
		walls.setLabelProvider(LabelProvider.createTextProvider(wall -> row((Wall) wall)));
		walls.addCheckStateListener(event -> validate(true));
		SpokenName.give(walls.getTable(), Messages.CopyFramesPage_Walls);
		GridDataFactory.fillDefaults().grab(true, true).hint(520, 150).applyTo(walls.getTable());
		Group from = new Group(page, SWT.NONE);
		from.setText(Messages.CopyFramesPage_From);
		GridLayoutFactory.swtDefaults().margins(10, 6).applyTo(from);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(from);
		start(from, Messages.CopyFramesPage_LeftEnd).setSelection(true);
		fromMiddle = start(from, Messages.CopyFramesPage_Middle);
		walls.setInput(session.room().getWalls().stream().filter(wall -> wall != source).toList());
		Dialog.applyDialogFont(page);
		setControl(page);
		validate(false);
	}

	private Button start(Group group, String text) {
		Button button = new Button(group, SWT.RADIO);
		button.setText(text);
		button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
			walls.refresh();
			validate(true);
		}));
		return button;
	}

	/** Returns the frames on the walls chosen. */
	List<FramePlacing> chosen() {
		return Arrays.stream(walls.getCheckedElements()).map(wall -> placing((Wall) wall)).toList();
	}

	private FramePlacing placing(Wall wall) {
		Start start = fromMiddle != null && fromMiddle.getSelection() ? Start.MIDDLE : Start.LEFT_END;
		return FramePlacing.of(frames, source, wall, start, session.design().layout().profile().face(), session.units());
	}

	private String row(Wall wall) {
		FramePlacing placing = placing(wall);
		return placing.fits() ? NLS.bind(Messages.CopyFramesPage_Fits, ElementText.name(wall))
				: NLS.bind(Messages.CopyFramesPage_WallRow, ElementText.name(wall), placing.refusal());
	}

	private void validate(boolean say) {
		List<FramePlacing> chosen = chosen();
		String problem = chosen.isEmpty() ? Messages.CopyFramesPage_NothingChosen
				: chosen.stream().filter(placing -> !placing.fits()).map(FramePlacing::refusal).findFirst().orElse(null);
		setErrorMessage(say ? problem : null);
		setPageComplete(problem == null);
	}
}
