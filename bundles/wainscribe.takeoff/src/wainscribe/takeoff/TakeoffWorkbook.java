// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.util.List;

import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * Writes a takeoff as a spreadsheet (Office Open XML): a summary, the buying list of the home and one sheet a room.
 * <p>
 * All text is written as text cells, so nothing in it is ever computed; quantities and money are numbers.
 */
public final class TakeoffWorkbook {

	private static final List<String> HEADER = List.of(Messages.TakeoffWorkbook_Group, Messages.TakeoffWorkbook_Item,
			Messages.TakeoffWorkbook_Quantity, Messages.TakeoffWorkbook_Unit, Messages.TakeoffWorkbook_Packs,
			Messages.TakeoffWorkbook_PackSize, Messages.TakeoffWorkbook_UnitPrice, Messages.TakeoffWorkbook_Total,
			Messages.TakeoffWorkbook_Formula, Messages.TakeoffWorkbook_Source);
	private static final double[] WIDTHS = { 18, 44, 10, 10, 8, 11, 12, 12, 90, 60 };
	private static final List<String> SUMMARY_HEADER = List.of(Messages.TakeoffWorkbook_Room, Messages.TakeoffWorkbook_Lines,
			Messages.TakeoffWorkbook_Unpriced, Messages.TakeoffWorkbook_Net, Messages.TakeoffWorkbook_Tax,
			Messages.TakeoffWorkbook_Gross);
	private static final double[] SUMMARY_WIDTHS = { 40, 8, 16, 18, 14, 18 };
	private static final String MONEY = "#,##0.00"; //$NON-NLS-1$
	private static final String AMOUNT = "0.00##"; //$NON-NLS-1$
	private static final int ITEM = 1;
	private static final int QUANTITY = 2;
	private static final int UNIT = 3;
	private static final int PACKS = 4;
	private static final int PACK_SIZE = 5;
	private static final int UNIT_PRICE = 6;
	private static final int TOTAL = 7;
	private static final int FORMULA = 8;
	private static final int SOURCE = 9;

	/**
	 * Writes a takeoff.
	 *
	 * @param takeoff what to write
	 * @param out     stays open
	 * @throws IOException if writing fails
	 */
	public void write(HomeTakeoff takeoff, OutputStream out) throws IOException {
		SheetNames names = new SheetNames();
		try (Workbook workbook = new Workbook(out, "Wainscribe", "1.0")) { //$NON-NLS-1$ //$NON-NLS-2$
			summary(workbook.newWorksheet(names.of(Messages.TakeoffWorkbook_Summary)), takeoff);
			lines(workbook.newWorksheet(names.of(Messages.TakeoffWorkbook_BuyingList)), takeoff.lines(), takeoff.totals(),
					takeoff.currency());
			for (RoomTakeoff room : takeoff.rooms()) {
				lines(workbook.newWorksheet(names.of(room.room())), room.lines(), room.totals(), takeoff.currency());
			}
		}
	}

	private static void summary(Worksheet sheet, HomeTakeoff takeoff) {
		header(sheet, SUMMARY_HEADER, SUMMARY_WIDTHS);
		int row = 1;
		for (RoomTakeoff room : takeoff.rooms()) {
			summaryRow(sheet, row++, room.room(), room.lines().size(), room.totals());
		}
		summaryRow(sheet, row, Messages.TakeoffWorkbook_AllRooms, takeoff.lines().size(), takeoff.totals());
		sheet.range(row, 0, row, SUMMARY_HEADER.size() - 1).style().bold().set();
		row += 2;
		text(sheet, row++, 0, takeoff.home());
		text(sheet, row++, 0, takeoff.currency());
		text(sheet, row, 0, Messages.TakeoffWorkbook_Explanation);
	}

	private static void summaryRow(Worksheet sheet, int row, String name, int lines, TakeoffTotals totals) {
		text(sheet, row, 0, name);
		sheet.value(row, 1, lines);
		sheet.value(row, 2, totals.unpriced());
		number(sheet, row, 3, totals.net(), MONEY);
		number(sheet, row, 4, totals.tax(), MONEY);
		number(sheet, row, 5, totals.gross(), MONEY);
	}

	private static void lines(Worksheet sheet, List<TakeoffLine> lines, TakeoffTotals totals, String currency) {
		header(sheet, HEADER, WIDTHS);
		int row = 1;
		for (TakeoffLine line : lines) {
			row = line(sheet, row, line);
		}
		row++;
		total(sheet, row++, Messages.TakeoffWorkbook_Net + (currency.isEmpty() ? "" : ' ' + currency), totals.net()); //$NON-NLS-1$
		total(sheet, row++, Messages.TakeoffWorkbook_Tax + ' ' + Amounts.plain(totals.taxPercent()) + " %", totals.tax()); //$NON-NLS-1$
		total(sheet, row++, Messages.TakeoffWorkbook_Gross, totals.gross());
		if (totals.unpriced() > 0) {
			text(sheet, row, ITEM, Messages.TakeoffWorkbook_Unpriced);
			sheet.value(row, TOTAL, totals.unpriced());
		}
	}

	/** Writes a line; each pack size after the first takes a row of its own. */
	private static int line(Worksheet sheet, int first, TakeoffLine line) {
		text(sheet, first, 0, line.group());
		text(sheet, first, ITEM, line.item());
		number(sheet, first, QUANTITY, line.quantity(), AMOUNT);
		text(sheet, first, UNIT, line.unit());
		text(sheet, first, FORMULA, line.formula());
		text(sheet, first, SOURCE, line.source());
		sheet.range(first, FORMULA, first, SOURCE).style().wrapText(true).verticalAlignment("top").set(); //$NON-NLS-1$
		int row = first;
		for (PackCount pack : line.packs()) {
			sheet.value(row, PACKS, pack.count());
			text(sheet, row, PACK_SIZE, Amounts.plain(pack.size()) + ' ' + pack.unit());
			number(sheet, row, UNIT_PRICE, pack.unitPrice(), MONEY);
			row++;
		}
		if (line.isPriced()) {
			number(sheet, first, TOTAL, line.total(), MONEY);
		} else {
			text(sheet, first, TOTAL, Messages.TakeoffWorkbook_UnpricedLine);
		}
		return Math.max(row, first + 1);
	}

	private static void total(Worksheet sheet, int row, String name, BigDecimal amount) {
		text(sheet, row, ITEM, name);
		number(sheet, row, TOTAL, amount, MONEY);
		sheet.range(row, ITEM, row, TOTAL).style().bold().format(MONEY).set();
	}

	private static void header(Worksheet sheet, List<String> titles, double[] widths) {
		for (int i = 0; i < titles.size(); i++) {
			text(sheet, 0, i, titles.get(i));
			sheet.width(i, widths[i]);
		}
		sheet.range(0, 0, 0, titles.size() - 1).style().bold().set();
		sheet.freezePane(0, 1);
	}

	private static void number(Worksheet sheet, int row, int column, BigDecimal value, String format) {
		if (value != null) {
			sheet.value(row, column, value);
			sheet.style(row, column).format(format).set();
		}
	}

	/** A control character has no place in XML; it becomes a space. A cell holds at most 32767 characters. */
	private static void text(Worksheet sheet, int row, int column, String value) {
		String clean = value.replaceAll("\\p{Cntrl}", " "); //$NON-NLS-1$ //$NON-NLS-2$
		sheet.value(row, column, clean.length() > 32_000 ? clean.substring(0, 32_000) : clean);
	}
}
