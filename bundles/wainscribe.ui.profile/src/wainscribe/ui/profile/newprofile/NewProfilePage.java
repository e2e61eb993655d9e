// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.newprofile;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthParser;
import wainscribe.model.length.LengthSyntaxException;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.profile.TrimProfile;
import wainscribe.profile.shape.ProfileShape;
import wainscribe.profile.shape.ShapeOutcome;
import wainscribe.profile.shape.ShapeParameter;
import wainscribe.profile.shape.ShapeRequest;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.HomeSessions;

/** Asks for a shape and its size, and shows what comes of it. */
final class NewProfilePage extends WizardPage {

	private static final int PREVIEW = 260;

	private final HomeSessions sessions;
	private final IProject home;
	private List<ProfileShape> shapes = List.of();
	private LengthUnit unit = LengthUnit.MILLIMETRE;
	private Combo shape;
	private Text face;
	private Text thickness;
	private Label numberLabel;
	private Spinner number;
	private Text name;
	private SectionPreview preview;
	private TrimProfile profile;
	private boolean ownName;
	private boolean writing;

	/**
	 * Creates the page.
	 *
	 * @param sessions the homes of the workspace
	 * @param home     takes the profile; null if there is none
	 */
	NewProfilePage(HomeSessions sessions, IProject home) {
		super("profile", Messages.NewProfilePage_Title, null); //$NON-NLS-1$
		this.sessions = Objects.requireNonNull(sessions);
		this.home = home;
		setDescription(Messages.NewProfilePage_Description);
		read();
	}

	private void read() {
		if (home == null) {
			return;
		}
		try {
			HomeSession session = sessions.openHome(home);
			ProfileCatalogue catalogue = session.profiles();
			shapes = catalogue.shapes();
			unit = session.units();
			sessions.close(session);
		} catch (CoreException e) {
			setErrorMessage(e.getStatus().getMessage());
		}
	}

	@Override
	public void createControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(3).spacing(8, 8).margins(12, 12).applyTo(page);
		label(page, Messages.NewProfilePage_Shape);
		shape = new Combo(page, SWT.READ_ONLY | SWT.DROP_DOWN);
		shape.setItems(shapes.stream().map(ProfileShape::name).toArray(String[]::new));
		shape.setVisibleItemCount(20);
		shape.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> proposeSize()));
		GridDataFactory.fillDefaults().grab(true, false).hint(240, SWT.DEFAULT).applyTo(shape);
		preview = new SectionPreview(page, Messages.NewProfilePage_Preview);
		GridDataFactory.fillDefaults().grab(true, true).span(1, 6).hint(PREVIEW, PREVIEW).indent(12, 0).applyTo(preview);
		face = text(page, Messages.NewProfilePage_Face);
		thickness = text(page, Messages.NewProfilePage_Thickness);
		numberLabel = label(page, Messages.NewProfilePage_Number);
		number = new Spinner(page, SWT.BORDER);
		number.addModifyListener(event -> changed());
		GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(number);
		name = text(page, Messages.NewProfilePage_Name);
		new Label(page, SWT.NONE);
		new Label(page, SWT.NONE);
		Dialog.applyDialogFont(page);
		setControl(page);
		if (shapes.isEmpty()) {
			setPageComplete(false);
			setErrorMessage(home == null ? Messages.NewProfilePage_NoHome : getErrorMessage());
		} else {
			shape.select(0);
			proposeSize();
		}
	}

	/** Returns the home that takes the profile. */
	IProject home() {
		return home;
	}

	/** Returns what was asked for. */
	TrimProfile profile() {
		return new TrimProfile(profile.id(), name.getText().strip(), profile.uses(), profile.section());
	}

	/** Says why nothing could be made. */
	void refuse(String why) {
		setErrorMessage(why);
	}

	private void proposeSize() {
		ProfileShape chosen = chosen();
		writing = true;
		face.setText(proposed(chosen.usual().width()));
		thickness.setText(proposed(chosen.usual().thickness()));
		Optional<ShapeParameter> parameter = chosen.parameter();
		number.setVisible(parameter.isPresent());
		numberLabel.setVisible(parameter.isPresent());
		numberLabel.setText(parameter.map(ShapeParameter::name).map(NewProfilePage::sentence).orElse(Messages.NewProfilePage_Number));
		parameter.ifPresent(known -> number.setValues(known.usual(), known.least(), known.most(), 0, 1, 5));
		numberLabel.getParent().layout(new Control[] { numberLabel });
		writing = false;
		changed();
	}

	/** In inches a usual size is proposed to the nearest tape mark. */
	private String proposed(Length usual) {
		return LengthFormat.asShown(unit == LengthUnit.INCH ? usual.roundedTo(unit.tapeMark()) : usual, unit);
	}

	private void changed() {
		if (writing) {
			return;
		}
		String fault = draw();
		setErrorMessage(fault);
		setPageComplete(fault == null);
	}

	/** Draws what is asked for; returns why it can't be, or null. */
	private String draw() {
		profile = null;
		Length width;
		Length projection;
		try {
			width = new LengthParser(unit).parse(face.getText());
			projection = new LengthParser(unit).parse(thickness.getText());
		} catch (LengthSyntaxException e) {
			return e.getMessage();
		}
		if (width.signum() <= 0 || projection.signum() <= 0) {
			return Messages.NewProfilePage_AboveZero;
		}
		ProfileShape chosen = chosen();
		Integer wanted = chosen.parameter().isPresent() ? number.getSelection() : null;
		ShapeOutcome outcome = new ShapeRequest(chosen.id(), width, projection, unit, wanted).draw(chosen);
		outcome.profile().ifPresent(this::take);
		return outcome.fault().orElseGet(() -> name.getText().isBlank() ? Messages.NewProfilePage_NoName : null);
	}

	private void take(TrimProfile drawn) {
		profile = drawn;
		preview.show(drawn.section());
		if (!ownName) {
			writing = true;
			name.setText(drawn.name());
			writing = false;
		}
	}

	private ProfileShape chosen() {
		return shapes.get(Math.max(0, shape.getSelectionIndex()));
	}

	private Text text(Composite page, String label) {
		label(page, label);
		Text text = new Text(page, SWT.BORDER);
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(text);
		text.addModifyListener(event -> {
			ownName |= !writing && text == name;
			changed();
		});
		return text;
	}

	private static Label label(Composite page, String words) {
		Label label = new Label(page, SWT.NONE);
		label.setText(words);
		return label;
	}

	private static String sentence(String words) {
		return words.substring(0, 1).toUpperCase(Locale.getDefault()) + words.substring(1) + ':';
	}
}
