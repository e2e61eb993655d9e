// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.closure;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String ClosureCheck_Angles;
	public static String ClosureCheck_Diagonal;
	public static String ClosureCheck_Likeliest;
	public static String ClosureCheck_LikeliestOf;
	public static String ClosureCheck_Longest;
	public static String ClosureCheck_Or;
	public static String CornerDoubts_AngleAgainstTriangle;
	public static String CornerDoubts_ShortLegs;

	static {
		NLS.initializeMessages("wainscribe.survey.closure.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
