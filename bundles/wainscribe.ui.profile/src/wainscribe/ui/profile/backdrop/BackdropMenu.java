// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.backdrop;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.gef.GraphicalViewer;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

import wainscribe.profile.section.SectionBox;
import wainscribe.ui.drafting.actions.SimpleAction;
import wainscribe.ui.drafting.tools.TableEditDomain;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.tools.MoveBackdropTool;
import wainscribe.ui.profile.tools.ScaleBackdropTool;

/** What can be done with a scanned section behind the drawing. */
public final class BackdropMenu {

	/** A picture that has no scale yet is laid as high as this, or as the section. */
	private static final double FIRST_HEIGHT = 60;

	private final TableEditDomain domain;
	private final GraphicalViewer viewer;
	private final ProfileDesk desk;

	/** Creates the menu of a desk. */
	public BackdropMenu(TableEditDomain domain, GraphicalViewer viewer, ProfileDesk desk) {
		this.domain = Objects.requireNonNull(domain);
		this.viewer = Objects.requireNonNull(viewer);
		this.desk = Objects.requireNonNull(desk);
	}

	/** Puts in what can be done now. */
	public void fill(IMenuManager menu) {
		menu.add(new SimpleAction(Messages.BackdropMenu_Choose, null, this::choose));
		Optional<Backdrop> now = desk.session().backdrop();
		if (now.isPresent()) {
			Backdrop backdrop = now.get();
			menu.add(new Separator());
			menu.add(new SimpleAction(Messages.BackdropMenu_Scale, null, () -> domain.setActiveTool(new ScaleBackdropTool(viewer, desk))));
			menu.add(new SimpleAction(Messages.BackdropMenu_Move, null, () -> domain.setActiveTool(new MoveBackdropTool(viewer, desk))));
			menu.add(new SimpleAction(backdrop.seen() ? Messages.BackdropMenu_Hide : Messages.BackdropMenu_Show, null,
					() -> lay(backdrop.seen() ? Messages.BackdropMenu_Hide : Messages.BackdropMenu_Show, backdrop.seen(!backdrop.seen()))));
			menu.add(new Separator());
			menu.add(new SimpleAction(Messages.BackdropMenu_Remove, null, () -> lay(Messages.BackdropMenu_Remove, null)));
		}
	}

	private void choose() {
		Shell shell = viewer.getControl().getShell();
		FileDialog dialog = new FileDialog(shell, SWT.OPEN);
		dialog.setText(Messages.BackdropMenu_ChooseTitle);
		dialog.setFilterExtensions("*.png;*.jpg;*.jpeg;*.PNG;*.JPG;*.JPEG"); //$NON-NLS-1$
		String chosen = dialog.open();
		if (chosen != null) {
			try {
				lay(Messages.BackdropMenu_Choose, first(Path.of(chosen)));
			} catch (SWTException e) {
				MessageDialog.openError(shell, Messages.BackdropMenu_ChooseTitle, NLS.bind(Messages.BackdropMenu_NoPicture, chosen));
			}
		}
	}

	/**
	 * Lays a picture so that it is as high as the section, to be given its scale.
	 *
	 * @throws SWTException if the file holds no picture
	 */
	Backdrop first(Path file) {
		ImageData size = new ImageData(file.toString());
		SectionBox box = desk.session().draft().section().box();
		double height = box.width().signum() > 0 ? box.width().approximateMillimetres() : FIRST_HEIGHT;
		return new Backdrop(file.toAbsolutePath(), height / size.height, box.low().x().approximateMillimetres(),
				box.low().y().approximateMillimetres(), true);
	}

	private void lay(String label, Backdrop other) {
		desk.session().execute(desk.session().laying(label, other));
	}
}
