// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import org.eclipse.osgi.util.NLS;

/** Translated texts of this bundle. */
final class Messages extends NLS {

	public static String FixingLines_Adhesive;
	public static String FixingLines_AdhesiveFormula;
	public static String FixingLines_Brads;
	public static String FixingLines_Caulk;
	public static String FixingLines_CaulkFormula;
	public static String FixingLines_Filler;
	public static String FixingLines_FillerFormula;
	public static String FixingLines_NailFormula;
	public static String FixingLines_Nails;
	public static String FixingLines_WetRooms;
	public static String Group_Fixing;
	public static String Group_Mouldings;
	public static String Group_Paint;
	public static String Group_Sundries;
	public static String MouldingLines_Item;
	public static String MouldingLines_Joined;
	public static String MouldingLines_Lengths;
	public static String MouldingLines_Metres;
	public static String MouldingLines_NoLength;
	public static String MouldingLines_Offcuts;
	public static String MouldingLines_OnePiece;
	public static String MouldingLines_Pieces;
	public static String MouldingLines_Spare;
	public static String MouldingLines_SpareFormula;
	public static String MouldingLines_Unnamed;
	public static String MouldingLines_Unplaced;
	public static String PaintLines_Litres;
	public static String PaintLines_Primer;
	public static String PaintLines_PrimerItem;
	public static String PaintLines_Spare;
	public static String PaintZones_Flat;
	public static String PaintZones_Moulding;
	public static String PaintZones_NotClosed;
	public static String PaintZones_Trim;
	public static String PaintZones_Walls;
	public static String Source_AdhesiveLength;
	public static String Source_CaulkFillet;
	public static String Source_CommonPractice;
	public static String Source_SpreadFinish;
	public static String Source_SpreadPrimer;
	public static String Source_TrimSpare;
	public static String Source_TrimWaste;
	public static String SundryLines_Sandpaper;
	public static String SundryLines_SandpaperFormula;
	public static String SundryLines_Tape;
	public static String SundryLines_TapeFormula;
	public static String TakeoffWorkbook_AllRooms;
	public static String TakeoffWorkbook_BuyingList;
	public static String TakeoffWorkbook_Explanation;
	public static String TakeoffWorkbook_Formula;
	public static String TakeoffWorkbook_Gross;
	public static String TakeoffWorkbook_Group;
	public static String TakeoffWorkbook_Item;
	public static String TakeoffWorkbook_Lines;
	public static String TakeoffWorkbook_Net;
	public static String TakeoffWorkbook_PackSize;
	public static String TakeoffWorkbook_Packs;
	public static String TakeoffWorkbook_Quantity;
	public static String TakeoffWorkbook_Room;
	public static String TakeoffWorkbook_Source;
	public static String TakeoffWorkbook_Summary;
	public static String TakeoffWorkbook_Tax;
	public static String TakeoffWorkbook_Total;
	public static String TakeoffWorkbook_Unit;
	public static String TakeoffWorkbook_UnitPrice;
	public static String TakeoffWorkbook_Unpriced;
	public static String TakeoffWorkbook_UnpricedLine;
	public static String Unit_Cartridge;
	public static String Unit_Length;
	public static String Unit_Piece;
	public static String Unit_Sheet;

	static {
		NLS.initializeMessages("wainscribe.takeoff.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
