// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.Optional;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.part.ViewPart;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.RailBand;
import wainscribe.layout.StripOutline;
import wainscribe.layout.pattern.PatternReader;
import wainscribe.model.Element;
import wainscribe.ui.session.HistoryActions;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.RoomSession;

/**
 * The numbers of whatever is selected, to be read and edited in place.
 * <p>
 * Shows what is selected in a part that answers {@code getAdapter(RoomSession.class)}. A selected object is a model element, a
 * {@link FrameOutline}, {@link StripOutline} or a {@link RailBand}, or adapts to one of them. An empty selection shows the room.
 */
public final class PropertiesView extends ViewPart implements ISelectionListener {

	/** Id of the view. */
	public static final String ID = "wainscribe.ui.properties"; //$NON-NLS-1$

	private PropertySheetPanel panel;
	private HistoryActions history;

	@Override
	public void createPartControl(Composite parent) {
		history = HistoryActions.install(getViewSite().getActionBars());
		panel = new PropertySheetPanel(parent, sources());
		getSite().getPage().addSelectionListener(this);
		selectionChanged(getSite().getPage().getActiveEditor(), null);
	}

	@Override
	public void selectionChanged(IWorkbenchPart part, ISelection selection) {
		if (part == null || part == this) {
			return;
		}
		subject(part, first(selection)).or(this::drawn).ifPresent(this::show);
	}

	/** What is selected in the drawing: a finding, when chosen, selects there what it is about. */
	private Optional<Subject> drawn() {
		IEditorPart editor = getSite().getPage().getActiveEditor();
		ISelectionProvider provider = editor == null ? null : editor.getSite().getSelectionProvider();
		return provider == null ? Optional.empty() : subject(editor, first(provider.getSelection()));
	}

	private static Object first(ISelection selection) {
		return selection instanceof IStructuredSelection list ? list.getFirstElement() : null;
	}

	@Override
	public void setFocus() {
		panel.setFocus();
	}

	@Override
	public void dispose() {
		getSite().getPage().removeSelectionListener(this);
		if (history != null) {
			history.follow(null);
		}
		super.dispose();
	}

	private static PropertySources sources() {
		IExtensionRegistry registry = Platform.getExtensionRegistry();
		return new PropertySources(new PatternReader(registry).read());
	}

	private void show(Subject subject) {
		history.follow(subject.history());
		panel.show(subject);
	}

	/** Finds out what is meant; empty for a selection that has nothing to do with rooms, which leaves what is shown. */
	private static Optional<Subject> subject(IWorkbenchPart part, Object selected) {
		SheetSubject sheet = Adapters.adapt(selected, SheetSubject.class);
		if (sheet != null) {
			return Optional.of(new Subject.OfEditor(sheet));
		}
		HomeSession home = Adapters.adapt(selected, HomeSession.class);
		if (home != null) {
			return Optional.of(new Subject.OfHome(home));
		}
		RoomSession chosen = Adapters.adapt(selected, RoomSession.class);
		if (chosen != null && thing(selected) == null) {
			return Optional.of(new Subject.InRoom(chosen, chosen.room()));
		}
		SheetSubject edited = Adapters.adapt(part, SheetSubject.class);
		if (edited != null) {
			return Optional.of(new Subject.OfEditor(edited));
		}
		RoomSession shown = Adapters.adapt(part, RoomSession.class);
		if (shown == null) {
			return Optional.empty();
		}
		Object thing = thing(selected);
		return Optional.of(new Subject.InRoom(shown, thing == null ? shown.room() : thing));
	}

	private static Object thing(Object selected) {
		for (Class<?> kind : new Class<?>[] { FrameOutline.class, StripOutline.class, RailBand.class, Element.class }) {
			Object thing = Adapters.adapt(selected, kind);
			if (thing != null) {
				return thing;
			}
		}
		return null;
	}
}
