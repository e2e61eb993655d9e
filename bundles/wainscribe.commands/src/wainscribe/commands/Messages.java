// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import org.eclipse.osgi.util.NLS;

/** Names of the steps in the history. */
final class Messages extends NLS {

	public static String AcceptCuttingPlanCommand_Label;
	public static String AddElementCommand_Label;
	public static String ChoosePatternCommand_Label;
	public static String ChooseProfileCommand_Label;
	public static String CopyFramesCommand_Label;
	public static String CopyTreatmentCommand_Label;
	public static String MoveElementCommand_Label;
	public static String MoveRailCommand_Label;
	public static String PlaceFramesCommand_Lock;
	public static String PlaceFramesCommand_Move;
	public static String PlaceFramesCommand_Size;
	public static String ReleaseFramesCommand_Label;
	public static String RemoveElementCommand_Label;
	public static String RenameElementCommand_Name;
	public static String ResizeElementCommand_Label;
	public static String SetFeatureCommand_Label;
	public static String SetGapCommand_Label;
	public static String SetVerticalGapCommand_Label;
	public static String TakeDownCommand_Goes;
	public static String TakeDownCommand_Stays;

	static {
		initializeMessages("wainscribe.commands.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
