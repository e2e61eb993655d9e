// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.Optional;

import org.eclipse.emf.common.command.CommandStackListener;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.ControlListener;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.views.properties.IPropertySource;

import wainscribe.ui.SpokenName;
import wainscribe.ui.session.RoomSession;
import wainscribe.ui.session.RoomSessionListener;

/** A property sheet under a heading; what it refuses it says below. */
final class PropertySheetPanel implements RoomSessionListener {

	private final PropertySources sources;
	private final SubjectWords subjectWords = new SubjectWords(new FeatureWords());
	private final CommandStackListener edits = event -> refresh();
	private final Label title;
	private final Label subtitle;
	private final RefusalStrip refusal;
	private final PropertyTable page;
	private Subject subject;

	PropertySheetPanel(Composite parent, PropertySources sources) {
		this.sources = sources;
		Composite body = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(body);
		Composite heading = new Composite(body, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(8, 6).spacing(0, 1).applyTo(heading);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(heading);
		title = new Label(heading, SWT.NONE);
		title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
		subtitle = new Label(heading, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(title);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(subtitle);
		Composite table = new Composite(body, SWT.NONE);
		table.setLayout(new FillLayout());
		GridDataFactory.fillDefaults().grab(true, true).applyTo(table);
		refusal = new RefusalStrip(body);
		page = new PropertyTable(table, this::source, refusal);
		furnish((Tree) page.getControl());
		body.addDisposeListener(event -> watch(null));
		showNothing();
	}

	/** Shows something else. */
	void show(Subject other) {
		watch(other);
		refusal.setErrorMessage(null);
		title.setText(subjectWords.title(other).replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		subtitle.setText(subjectWords.subtitle(other).replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		page.show(other);
		fit((Tree) page.getControl());
	}

	void setFocus() {
		page.setFocus();
	}

	@Override
	public void designChanged(RoomSession session) {
		refresh();
	}

	@Override
	public void roomReplaced(RoomSession session) {
		show(new Subject.InRoom(session, session.room()));
	}

	private void refresh() {
		if (page.getControl().isDisposed() || subject == null) {
			return;
		}
		Optional<Subject> now = subject.current();
		if (now.isPresent() && now.get().equals(subject)) {
			title.setText(subjectWords.title(subject).replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
			page.refresh();
		} else {
			show(now.orElseGet(() -> subject instanceof Subject.InRoom(var session, var gone)
				? new Subject.InRoom(session, session.room()) : subject));
		}
	}

	private void showNothing() {
		title.setText(Messages.PropertySheetPanel_Nothing);
		subtitle.setText(Messages.PropertySheetPanel_NothingHint);
	}

	private IPropertySource source(Object object) {
		return switch (object) {
			case Subject.OfHome(var session) -> sources.of(session);
			case Subject.OfEditor(var sheet) -> sheet.properties();
			case Subject.InRoom(var session, var thing) -> sources.of(session, thing).orElse(null);
			case IPropertySource nested -> nested;
			case null, default -> null;
		};
	}

	private void watch(Subject other) {
		switch (subject) {
			case Subject.InRoom(var session, var thing) -> session.removeListener(this);
			case Subject.OfHome(var session) -> session.commandStack().removeCommandStackListener(edits);
			case Subject.OfEditor(var sheet) -> sheet.history().removeCommandStackListener(edits);
			case null -> { }
		}
		subject = other;
		switch (subject) {
			case Subject.InRoom(var session, var thing) -> session.addListener(this);
			case Subject.OfHome(var session) -> session.commandStack().addCommandStackListener(edits);
			case Subject.OfEditor(var sheet) -> sheet.history().addCommandStackListener(edits);
			case null -> { }
		}
	}

	/** Names take what they need of the width, values the rest, but neither less than a good third. */
	private static void furnish(Tree tree) {
		tree.setHeaderVisible(false);
		tree.setLinesVisible(false);
		SpokenName.give(tree, Messages.PropertySheetPanel_Name);
		tree.addControlListener(ControlListener.controlResizedAdapter(event -> fit(tree)));
	}

	private static void fit(Tree tree) {
		int width = tree.getClientArea().width;
		if (tree.getColumnCount() > 1 && width > 0) {
			tree.getColumn(0).pack();
			int names = Math.clamp(tree.getColumn(0).getWidth(), width * 38 / 100, width * 62 / 100);
			tree.getColumn(0).setWidth(names);
			tree.getColumn(1).setWidth(width - names);
		}
	}
}
