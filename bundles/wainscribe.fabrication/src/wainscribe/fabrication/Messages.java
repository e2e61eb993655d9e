// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import org.eclipse.osgi.util.NLS;

/** Translated texts of this bundle. */
final class Messages extends NLS {

	public static String FrameMembers_Where;
	public static String GlassPieces_Channel;
	public static String GlassPieces_Clips;
	public static String GlassPieces_Mirror;
	public static String GlassPieces_Narrow;
	public static String GlassPieces_NoSight;
	public static String GlassPieces_Rebate;
	public static String GlassPieces_RebateUnmeasured;
	public static String PieceNotes_BeyondSaw;
	public static String PieceNotes_LongerThanStock;
	public static String PieceNotes_Scarf;
	public static String PieceNotes_ScarfFindStud;
	public static String PieceNotes_ScarfModule;
	public static String PieceNotes_ScarfOnStud;
	public static String RunBlocks_Corner;
	public static String RunBlocks_Plinth;
	public static String RunPieces_CrownSpring;
	public static String RunPieces_Return;
	public static String RunPieces_Sloped;
	public static String RunPieces_ThicknessAssumed;
	public static String RunPieces_Where;
	public static String Side_Bottom;
	public static String Side_Left;
	public static String Side_Right;
	public static String Side_Top;
	public static String StripPieces_Where;

	static {
		NLS.initializeMessages("wainscribe.fabrication.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
