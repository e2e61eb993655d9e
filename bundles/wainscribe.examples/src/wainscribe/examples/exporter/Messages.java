// SPDX-License-Identifier: EPL-2.0
package wainscribe.examples.exporter;

import org.eclipse.osgi.util.NLS;

/** Texts of the example exporter. */
final class Messages extends NLS {

	public static String MarkListExporter_Level;
	public static String MarkListExporter_Line;
	public static String MarkListExporter_Name;
	public static String MarkListExporter_Plumb;

	static {
		initializeMessages("wainscribe.examples.exporter.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
