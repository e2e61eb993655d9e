// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.cutting;

import org.eclipse.osgi.util.NLS;

/** Words of the Cutting view. */
final class Messages extends NLS {

	public static String BarWords_Bar;
	public static String BarWords_Bought;
	public static String BarWords_Gone;
	public static String BarWords_Kind;
	public static String BarWords_Left;
	public static String BarWords_LeftKept;
	public static String BarWords_Offcut;
	public static String BarWords_Piece;
	public static String BarWords_PieceOn;
	public static String BarWords_Accepted;
	public static String BarsCanvas_Name;
	public static String BuyTable_Count;
	public static String BuyTable_Each;
	public static String BuyTable_Length;
	public static String BuyTable_Moulding;
	public static String BuyTable_Name;
	public static String BuyTable_NoPrice;
	public static String BuyTable_Total;
	public static String CuttingActions_Accept;
	public static String CuttingActions_AcceptTip;
	public static String CuttingActions_CutSheet;
	public static String CuttingActions_CutSheetTip;
	public static String CuttingActions_Failed;
	public static String CuttingActions_Labels;
	public static String CuttingActions_LabelsTip;
	public static String CuttingActions_Reveal;
	public static String CuttingActions_Stop;
	public static String CuttingActions_StopTip;
	public static String CuttingView_AllCut;
	public static String CuttingView_NoHome;
	public static String CuttingView_NothingToCut;
	public static String CuttingView_Planning;
	public static String PlanJob_Name;
	public static String PlanWords_Best;
	public static String PlanWords_Cost;
	public static String PlanWords_Missing;
	public static String PlanWords_MissingMore;
	public static String PlanWords_Offcut;
	public static String PlanWords_Offcuts;
	public static String PlanWords_Proved;
	public static String PlanWords_ProvedPriced;
	public static String PlanWords_Unpriced;
	public static String PlanWords_Working;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
