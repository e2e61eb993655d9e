// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String SurveyReader_Folder;
	public static String SurveyReader_Missing;
	public static String SurveyReader_Unreadable;

	static {
		NLS.initializeMessages("wainscribe.survey.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
