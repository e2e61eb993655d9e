// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.suitability;

import org.eclipse.osgi.util.NLS;

/** Translated texts of this package. */
final class Messages extends NLS {

	public static String Suitability_ColdSurface;
	public static String Suitability_Dew;
	public static String Suitability_Gloss;
	public static String Suitability_Humidity;
	public static String Suitability_LimewashInDamp;
	public static String Suitability_LimewashOverPaint;
	public static String Suitability_Mildew;
	public static String Suitability_OverLimewash;
	public static String Suitability_Scrub;
	public static String Suitability_Temperature;

	static {
		NLS.initializeMessages("wainscribe.finishes.suitability.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
