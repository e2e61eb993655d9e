// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.services;

import org.eclipse.osgi.util.NLS;

/** What the rules of services say. */
final class Messages extends NLS {

	public static String BasinWithoutReceptacleCheck_Far;
	public static String BasinWithoutReceptacleCheck_None;
	public static String BoxBehindBoardCheck_SetBack;
	public static String BuriedBoxCheck_Behind;
	public static String PanelObstructedCheck_Bath;
	public static String PanelObstructedCheck_Width;
	public static String ReceptacleByTubCheck_Near;
	public static String UnprotectedReceptacleCheck_Ask;
	public static String UnprotectedReceptacleCheck_Bath;
	public static String UnprotectedReceptacleCheck_Near;
	public static String UnprotectedReceptacleCheck_Without;

	static {
		initializeMessages("wainscribe.rules.services.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
