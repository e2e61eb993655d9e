// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.findings;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.viewers.CellLabelProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;

import wainscribe.rules.Severity;
import wainscribe.ui.Icon;
import wainscribe.ui.SpokenName;
import wainscribe.ui.findings.FindingsSource.RoomFinding;

/** Findings under their weights. */
final class FindingsTree {

	/**
	 * All findings of one weight.
	 *
	 * @param severity the weight
	 * @param findings at least one
	 */
	record Group(Severity severity, List<RoomFinding> findings) {
	}

	private final TreeViewer viewer;
	private final Set<Severity> hidden = EnumSet.noneOf(Severity.class);
	private final LocalResourceManager images;
	private List<RoomFinding> findings = List.of();

	FindingsTree(Composite parent) {
		Composite table = new Composite(parent, SWT.NONE);
		TreeColumnLayout columns = new TreeColumnLayout();
		table.setLayout(columns);
		viewer = new TreeViewer(table, SWT.MULTI | SWT.FULL_SELECTION | SWT.V_SCROLL);
		images = new LocalResourceManager(JFaceResources.getResources(), viewer.getControl());
		viewer.setContentProvider(new Content());
		viewer.getTree().setHeaderVisible(true);
		column(columns, Messages.FindingsTree_Message, 56, new MessageLabels());
		column(columns, Messages.FindingsTree_Place, 24, labels(found -> FindingWords.placeInHome(found.finding())));
		column(columns, Messages.FindingsTree_Source, 20, labels(found -> found.finding().source()));
		SpokenName.give(viewer.getTree(), Messages.FindingsTree_Name);
	}

	TreeViewer viewer() {
		return viewer;
	}

	/** Shows other findings; what was selected stays so if it is still found. */
	void show(List<RoomFinding> others) {
		List<?> selected = viewer.getStructuredSelection().toList();
		findings = others;
		viewer.setInput(groups());
		viewer.expandAll();
		List<RoomFinding> again = findings.stream()
			.filter(found -> selected.stream().anyMatch(old -> old instanceof RoomFinding before && before.isSame(found))).toList();
		viewer.setSelection(new StructuredSelection(again));
	}

	/** Shows or hides all findings of one weight. */
	void setShown(Severity severity, boolean shown) {
		if (shown) {
			hidden.remove(severity);
		} else {
			hidden.add(severity);
		}
		show(findings);
	}

	/** Returns what is selected, or everything shown if nothing is; a selected heading stands for all under it. */
	List<RoomFinding> selectedOrAll() {
		List<RoomFinding> all = new ArrayList<>();
		for (Object selected : viewer.getStructuredSelection()) {
			List<RoomFinding> meant = selected instanceof Group group ? group.findings() : List.of((RoomFinding) selected);
			meant.stream().filter(found -> !all.contains(found)).forEach(all::add);
		}
		return all.isEmpty() ? groups().stream().flatMap(group -> group.findings().stream()).toList() : all;
	}

	private List<Group> groups() {
		List<Group> groups = new ArrayList<>();
		for (Severity severity : Severity.values()) {
			List<RoomFinding> members = findings.stream().filter(found -> found.finding().severity() == severity).toList();
			if (!members.isEmpty() && !hidden.contains(severity)) {
				groups.add(new Group(severity, members));
			}
		}
		return groups;
	}

	private void column(TreeColumnLayout layout, String title, int weight, CellLabelProvider labels) {
		TreeViewerColumn column = new TreeViewerColumn(viewer, SWT.NONE);
		column.getColumn().setText(title);
		column.setLabelProvider(labels);
		layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, 80));
	}

	private static CellLabelProvider labels(Function<RoomFinding, String> text) {
		return ColumnLabelProvider.createTextProvider(
			element -> element instanceof RoomFinding found ? text.apply(found) : ""); //$NON-NLS-1$
	}

	/** Weight and number of a heading, message of a finding. */
	private final class MessageLabels extends ColumnLabelProvider {

		@Override
		public String getText(Object element) {
			return element instanceof Group group ? FindingCounts.counted(group.severity(), group.findings().size())
				: ((RoomFinding) element).finding().message();
		}

		@Override
		public Image getImage(Object element) {
			return element instanceof Group group ? images.get(Icon.of(group.severity()).descriptor()) : null;
		}
	}

	/** Findings below headings. */
	private static final class Content implements ITreeContentProvider {

		@Override
		public Object[] getElements(Object input) {
			return ((List<?>) input).toArray();
		}

		@Override
		public Object[] getChildren(Object parent) {
			return parent instanceof Group group ? group.findings().toArray() : new Object[0];
		}

		@Override
		public Object getParent(Object element) {
			return null;
		}

		@Override
		public boolean hasChildren(Object element) {
			return element instanceof Group;
		}
	}
}
