// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import wainscribe.drawing.Tone;

/** Prints tables; their heading comes again on each page. */
final class TablePrinter {

	private static final double SIZE = Ink.SMALL;
	private static final double LINE = SIZE * 1.4;
	private static final double PAD = 1.1;
	private static final double BETWEEN = 3;

	private final PageFlow flow;
	private final List<Column> columns;
	private final double shares;

	TablePrinter(PageFlow flow, List<Column> columns) {
		this.flow = flow;
		this.columns = List.copyOf(columns);
		shares = columns.stream().mapToDouble(Column::share).sum();
	}

	private double width(int column) {
		return flow.width() * columns.get(column).share() / shares;
	}

	void print(List<List<String>> rows) throws IOException {
		flow.keep(4 * LINE + 6 * PAD);
		head();
		for (List<String> row : rows) {
			row(row);
		}
		flow.drop(2);
	}

	/** Prints a line across all columns. */
	void group(String title) throws IOException {
		flow.keep(4 * LINE);
		flow.drop(2.5);
		flow.paragraph(title, Ink.BODY, Ink.TEXT, 0, flow.width(), true);
		flow.drop(0.8);
	}

	void head() throws IOException {
		cells(columns.stream().map(Column::title).toList(), Ink.SOFT);
	}

	void row(List<String> row) throws IOException {
		double height = 0;
		for (int i = 0; i < columns.size(); i++) {
			height = Math.max(height, lines(row.get(i), i).size() * LINE);
		}
		if (flow.keep(height + 2 * PAD)) {
			head();
		}
		cells(row, Ink.TEXT);
	}

	private void cells(List<String> row, Tone tone) throws IOException {
		List<List<String>> cells = new ArrayList<>();
		for (int i = 0; i < columns.size(); i++) {
			cells.add(lines(row.get(i), i));
		}
		int most = cells.stream().mapToInt(List::size).max().orElse(1);
		double x = 0;
		for (int i = 0; i < columns.size(); i++) {
			for (int line = 0; line < cells.get(i).size(); line++) {
				String text = cells.get(i).get(line);
				double at = columns.get(i).right() ? x + width(i) - BETWEEN - flow.face().width(text, SIZE) : x;
				flow.put(text, at, PAD + LINE * line + SIZE, SIZE, tone, false);
			}
			x += width(i);
		}
		flow.drop(most * LINE + 2 * PAD);
		flow.rule();
	}

	private List<String> lines(String text, int column) throws IOException {
		return new TextLines(flow.face()).of(text, SIZE, width(column) - BETWEEN);
	}
}
