// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import org.eclipse.osgi.util.NLS;

/** Translated texts of this bundle. */
final class Messages extends NLS {

	public static String BuiltInProfiles_Astragal;
	public static String BuiltInProfiles_Bead;
	public static String BuiltInProfiles_BeadAndCove;
	public static String BuiltInProfiles_BeadCasing;
	public static String BuiltInProfiles_BeadRail;
	public static String BuiltInProfiles_Cap;
	public static String BuiltInProfiles_Cove;
	public static String BuiltInProfiles_CoveCrown;
	public static String BuiltInProfiles_Fillet;
	public static String BuiltInProfiles_NameWithSize;
	public static String BuiltInProfiles_Ogee;
	public static String BuiltInProfiles_OgeeBase;
	public static String BuiltInProfiles_OgeeCasing;
	public static String BuiltInProfiles_OgeeCrown;
	public static String BuiltInProfiles_OgeeRail;
	public static String BuiltInProfiles_Ovolo;
	public static String BuiltInProfiles_Scotia;
	public static String BuiltInProfiles_TorusBase;

	static {
		NLS.initializeMessages("wainscribe.profile.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
