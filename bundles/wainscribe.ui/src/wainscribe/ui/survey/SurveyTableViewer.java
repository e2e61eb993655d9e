// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.survey;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnPixelData;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;

import wainscribe.survey.SurveyColumn;
import wainscribe.survey.SurveyProblem;
import wainscribe.ui.Icon;
import wainscribe.ui.SpokenName;
import wainscribe.ui.survey.SurveyPreview.Line;

/** The rows of a survey as they are written, those with problems marked. */
final class SurveyTableViewer {

	private final TableViewer viewer;
	private final LocalResourceManager images;

	SurveyTableViewer(Composite parent) {
		Composite table = new Composite(parent, SWT.NONE);
		TableColumnLayout columns = new TableColumnLayout();
		table.setLayout(columns);
		viewer = new TableViewer(table, SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL | SWT.VIRTUAL);
		images = new LocalResourceManager(JFaceResources.getResources(), viewer.getControl());
		viewer.setContentProvider(ArrayContentProvider.getInstance());
		viewer.getTable().setHeaderVisible(true);
		TableViewerColumn number = new TableViewerColumn(viewer, SWT.NONE);
		number.getColumn().setText(Messages.SurveyTableViewer_Row);
		number.setLabelProvider(new RowLabels());
		columns.setColumnData(number.getColumn(), new ColumnPixelData(64));
		for (SurveyColumn column : SurveyColumn.values()) {
			add(columns, column);
		}
		SpokenName.give(viewer.getTable(), Messages.SurveyTableViewer_Name);
		ColumnViewerToolTipSupport.enableFor(viewer);
	}

	TableViewer viewer() {
		return viewer;
	}

	/** Shows the lines of a survey and brings the first with an error into sight. */
	void show(List<Line> lines) {
		viewer.setInput(lines);
		lines.stream().filter(Line::isError).findFirst().ifPresent(viewer::reveal);
	}

	private void add(TableColumnLayout columns, SurveyColumn column) {
		TableViewerColumn shown = new TableViewerColumn(viewer, SWT.NONE);
		shown.getColumn().setText(column.title());
		shown.setLabelProvider(new ColumnLabelProvider() {

			@Override
			public String getText(Object element) {
				Line line = (Line) element;
				return line.row() == null ? "" : line.row().cell(column); //$NON-NLS-1$
			}

			@Override
			public Image getImage(Object element) {
				return ((Line) element).problems().stream().filter(problem -> problem.column().equals(column.title())).findFirst()
					.map(SurveyTableViewer.this::image).orElse(null);
			}

			@Override
			public String getToolTipText(Object element) {
				return told((Line) element);
			}
		});
		columns.setColumnData(shown.getColumn(), new ColumnWeightData(weight(column), least(column)));
	}

	private static int weight(SurveyColumn column) {
		return switch (column) {
			case NOTE -> 26;
			case ROOM, NAME -> 14;
			default -> 7;
		};
	}

	/** A length with a fraction and a mark before it must be read whole. */
	private static int least(SurveyColumn column) {
		return switch (column) {
			case NOTE, ROOM, NAME -> 110;
			case X, Y, WIDTH, HEIGHT, DEPTH -> 78;
			default -> 66;
		};
	}

	private Image image(SurveyProblem problem) {
		return images.get((problem.isError() ? Icon.ERROR : Icon.WARNING).descriptor());
	}

	private static String told(Line line) {
		return line.problems().isEmpty() ? null : line.problems().stream().map(SurveyProblem::message).collect(Collectors.joining("\n")); //$NON-NLS-1$
	}

	/** The line's number, marked with its worst problem. */
	private final class RowLabels extends ColumnLabelProvider {

		@Override
		public String getText(Object element) {
			int number = ((Line) element).number();
			return number == 0 ? Messages.SurveyTableViewer_File : String.valueOf(number);
		}

		@Override
		public Image getImage(Object element) {
			Line line = (Line) element;
			return line.problems().stream().sorted((a, b) -> Boolean.compare(b.isError(), a.isError())).findFirst()
				.map(SurveyTableViewer.this::image).orElse(null);
		}

		@Override
		public String getToolTipText(Object element) {
			return told((Line) element);
		}
	}
}
