// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String Alternatives_DefaultGap;
	public static String Alternatives_Fewer;
	public static String Alternatives_Gap;
	public static String Alternatives_More;
	public static String Alternatives_Rail;
	public static String BarredWording_Alone;
	public static String BarredWording_AtAnyGap;
	public static String BarredWording_AtGap;
	public static String BarredWording_BarMany;
	public static String BarredWording_Bars;
	public static String BarredWording_Every;
	public static String BarredWording_FromTo;
	public static String Difference_Anchors;
	public static String Difference_Closer;
	public static String Difference_Excess;
	public static String Difference_Near;
	public static String Difference_None;
	public static String Difference_OffModule;
	public static String Difference_OutOfBand;
	public static String Difference_Plain;
	public static String Difference_Splits;
	public static String GapCheck_FieldTooNarrow;
	public static String GapCheck_FieldTooWide;
	public static String GapCheck_Largest;
	public static String GapCheck_NoFrame;
	public static String GapCheck_WidestField;
	public static String PlainStretches_HeightUnknown;
	public static String PlainStretches_NearestGap;
	public static String PlainStretches_NearestRail;
	public static String PlainStretches_NearestRails;
	public static String PlainStretches_NothingFits;
	public static String PlainStretches_RailAboveCeiling;
	public static String PlainStretches_RailHits;
	public static String PlainStretches_RailInBase;
	public static String PlainStretches_RailUnderBase;
	public static String PlainStretches_RowsTooLow;
	public static String PlainStretches_StockTooShort;
	public static String PlainStretches_TooLow;
	public static String PlainStretches_TooLowForStrips;
	public static String RunReasons_AnchorBarred;
	public static String RunReasons_AnchorLost;
	public static String RunReasons_AnchorStock;
	public static String RunReasons_BarredByThing;
	public static String RunReasons_Bay;
	public static String RunReasons_BayStock;
	public static String RunReasons_Near;
	public static String RunReasons_SlopeTooLow;
	public static String RunReasons_Split;
	public static String RunReasons_StockTooShort;
	public static String RunReasons_TooShort;
	public static String RunReasons_TooShortForStrips;
	public static String RunReasons_TwoTiers;
	public static String RunReasons_WideGap;
	public static String Wording_And;
	public static String Wording_Data;
	public static String Wording_Door;
	public static String Wording_Field;
	public static String Wording_Fields;
	public static String Wording_Frame;
	public static String Wording_Frames;
	public static String Wording_Panel;
	public static String Wording_Plate;
	public static String Wording_Receptacle;
	public static String Wording_Switch;
	public static String Wording_Thing;
	public static String Wording_ThingAt;
	public static String Wording_Window;

	static {
		NLS.initializeMessages("wainscribe.layout.site.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
