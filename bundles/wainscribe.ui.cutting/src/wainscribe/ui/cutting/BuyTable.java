// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.cutting;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

import wainscribe.takeoff.cutting.BuyLine;
import wainscribe.ui.SpokenName;

/** The lengths that a plan buys. */
final class BuyTable {

	private final Composite body;
	private final Table table;

	BuyTable(Composite parent) {
		body = new Composite(parent, SWT.NONE);
		body.setLayout(new FillLayout());
		table = new Table(body, SWT.FULL_SELECTION | SWT.BORDER);
		table.setHeaderVisible(true);
		column(Messages.BuyTable_Count, SWT.RIGHT);
		column(Messages.BuyTable_Length, SWT.RIGHT);
		column(Messages.BuyTable_Moulding, SWT.LEFT);
		column(Messages.BuyTable_Each, SWT.RIGHT);
		column(Messages.BuyTable_Total, SWT.RIGHT);
		SpokenName.give(table, Messages.BuyTable_Name);
	}

	private void column(String title, int style) {
		TableColumn column = new TableColumn(table, style);
		column.setText(title);
		column.pack();
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
		// as wide as what they say at any scale: a moulding without its material would look like another
		for (TableColumn column : table.getColumns()) {
			column.pack();
		}
	}
}
