// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.surface;

import org.eclipse.osgi.util.NLS;

/** Translated texts of this package. */
final class Messages extends NLS {

	public static String Preparation_Alcohol;
	public static String Preparation_Asbestos;
	public static String Preparation_Bind;
	public static String Preparation_Bonding;
	public static String Preparation_Caulk;
	public static String Preparation_Chalk;
	public static String Preparation_Dense;
	public static String Preparation_Dull;
	public static String Preparation_DullOil;
	public static String Preparation_Fill;
	public static String Preparation_Knots;
	public static String Preparation_Lead;
	public static String Preparation_LeadUnknown;
	public static String Preparation_Limewash;
	public static String Preparation_MdfSand;
	public static String Preparation_MdfSeal;
	public static String Preparation_MetalPrime;
	public static String Preparation_Patch;
	public static String Preparation_PlasterSeal;
	public static String Preparation_Scrape;
	public static String Preparation_Wash;

	static {
		NLS.initializeMessages("wainscribe.finishes.surface.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
