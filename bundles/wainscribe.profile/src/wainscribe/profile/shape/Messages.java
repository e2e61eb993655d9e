// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import org.eclipse.osgi.util.NLS;

/** Translated texts of this package. */
final class Messages extends NLS {

	public static String BaseMouldings_ChamferedBase;
	public static String BaseMouldings_CoveBase;
	public static String BaseMouldings_EasedBase;
	public static String BaseMouldings_OgeeBase;
	public static String BaseMouldings_OvoloBase;
	public static String BaseMouldings_Plinth;
	public static String BaseMouldings_QuarterRound;
	public static String BaseMouldings_SquareBase;
	public static String BaseMouldings_SteppedBase;
	public static String BaseMouldings_TorusBase;
	public static String CasingMouldings_BackBand;
	public static String CasingMouldings_BeadCasing;
	public static String CasingMouldings_OgeeCasing;
	public static String CasingMouldings_TaperedCasing;
	public static String CrownMouldings_BedMould;
	public static String CrownMouldings_BevelCrown;
	public static String CrownMouldings_CoveCrown;
	public static String CrownMouldings_CymaCrown;
	public static String CrownMouldings_OgeeCrown;
	public static String CrownMouldings_Scotia;
	public static String FlatMouldings_Bevel;
	public static String FlatMouldings_ChamferedStrip;
	public static String FlatMouldings_EasedStrip;
	public static String FlatMouldings_Flutes;
	public static String FlatMouldings_Hollow;
	public static String FlatMouldings_Lip;
	public static String FlatMouldings_QuirkBead;
	public static String FlatMouldings_Reeds;
	public static String FlatMouldings_Ridge;
	public static String FlatMouldings_Stepped;
	public static String FlatMouldings_TwoCentreHollow;
	public static String FrameMouldings_Astragal;
	public static String FrameMouldings_Bead;
	public static String FrameMouldings_BeadAndCove;
	public static String FrameMouldings_Bolection;
	public static String FrameMouldings_Cavetto;
	public static String FrameMouldings_Cove;
	public static String FrameMouldings_CymaRecta;
	public static String FrameMouldings_CymaReversa;
	public static String FrameMouldings_Echinus;
	public static String FrameMouldings_Fillet;
	public static String FrameMouldings_FlatBead;
	public static String FrameMouldings_Ogee;
	public static String FrameMouldings_Ovolo;
	public static String FrameMouldings_Thumb;
	public static String FrameMouldings_Torus;
	public static String Parameter_BeadOfTheThickness;
	public static String Parameter_BeadOfTheWidth;
	public static String Parameter_ChamferOfTheThickness;
	public static String Parameter_ChamfersOfTheThickness;
	public static String Parameter_DepthOfTheThickness;
	public static String Parameter_EachOgeeOfTheWidth;
	public static String Parameter_EdgesOfTheThickness;
	public static String Parameter_FieldOfTheThickness;
	public static String Parameter_FilletOfTheWidth;
	public static String Parameter_FilletsOfTheWidth;
	public static String Parameter_Flutes;
	public static String Parameter_HollowBelowOfTheThickness;
	public static String Parameter_HollowOfTheWidth;
	public static String Parameter_InnerEdgeOfTheThickness;
	public static String Parameter_LapOfTheThickness;
	public static String Parameter_LapOverTheBoardOfTheThickness;
	public static String Parameter_LowEdgeOfTheThickness;
	public static String Parameter_NoseOfTheWidth;
	public static String Parameter_Reeds;
	public static String Parameter_RoundOfTheThickness;
	public static String Parameter_RoundsOfTheNoseOfTheThickness;
	public static String Parameter_RoundsOfTheThickness;
	public static String Parameter_Steps;
	public static String Parameter_UpperBoardOfTheThickness;
	public static String Parameter_UpperEdgeOfTheThickness;
	public static String Parameter_UpperFilletOfTheWidth;
	public static String Parameter_UpperPartOfTheWidth;
	public static String RailMouldings_BeadRail;
	public static String RailMouldings_Cap;
	public static String RailMouldings_NosedCap;
	public static String RailMouldings_OgeeRail;
	public static String RailMouldings_OvoloRail;
	public static String RailMouldings_PictureRail;
	public static String RailMouldings_RebatedCap;
	public static String ShapeRequest_CannotBeDrawn;
	public static String ShapeRequest_NameWithSize;
	public static String ShapeRequest_NoNumber;
	public static String ShapeRequest_OtherSize;
	public static String ShapeRequest_OutOfLimits;

	static {
		NLS.initializeMessages("wainscribe.profile.shape.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
