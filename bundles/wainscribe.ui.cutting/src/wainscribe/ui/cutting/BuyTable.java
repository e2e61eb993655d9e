// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.cutting;

import java.util.List;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

import wainscribe.takeoff.cutting.BuyLine;
import wainscribe.ui.SpokenName;

/** The lengths that a plan buys. */
final class BuyTable {

	private static final int NARROW = 14;
	private static final int MIDDLE = 16;
	private static final int WIDE = 44;
	private static final int LEAST = 48;

	private final Composite body;
	private final Table table;

	BuyTable(Composite parent) {
		body = new Composite(parent, SWT.NONE);
		TableColumnLayout layout = new TableColumnLayout();
		body.setLayout(layout);
		table = new Table(body, SWT.FULL_SELECTION | SWT.BORDER);
		table.setHeaderVisible(true);
		column(layout, Messages.BuyTable_Count, SWT.RIGHT, NARROW);
		column(layout, Messages.BuyTable_Length, SWT.RIGHT, MIDDLE);
		column(layout, Messages.BuyTable_Moulding, SWT.LEFT, WIDE);
		column(layout, Messages.BuyTable_Each, SWT.RIGHT, NARROW);
		column(layout, Messages.BuyTable_Total, SWT.RIGHT, MIDDLE);
		SpokenName.give(table, Messages.BuyTable_Name);
	}

	private void column(TableColumnLayout layout, String title, int style, int weight) {
		TableColumn column = new TableColumn(table, style);
		column.setText(title);
		layout.setColumnData(column, new ColumnWeightData(weight, LEAST, true));
	}

	Control control() {
		return body;
	}

	void show(List<BuyLine> lines, PlanWords words) {
		table.removeAll();
		for (BuyLine line : lines) {
			TableItem row = new TableItem(table, SWT.NONE);
			row.setText(new String[] { String.valueOf(line.count()), words.length(line), words.of(line.kind()), words.amount(line.price()),
					words.amount(line.total()) });
		}
	}
}
