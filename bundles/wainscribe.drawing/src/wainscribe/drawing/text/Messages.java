// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.text;

import org.eclipse.osgi.util.NLS;

/** Translated texts of this bundle. */
public final class Messages extends NLS {

	public static String CheckRule_Print;
	public static String DxfExporter_Name;
	public static String ElevationPage_Scale;
	public static String PdfExporter_Name;
	public static String PngExporter_Name;
	public static String ProfileSheet_Cope;
	public static String ProfileSheet_Id;
	public static String ProfileSheet_NoCope;
	public static String SectionMeasures_Inches;
	public static String SectionMeasures_Millimetres;
	public static String SvgExporter_Name;

	static {
		NLS.initializeMessages("wainscribe.drawing.text.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
