// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules.heat;

import org.eclipse.osgi.util.NLS;

/** What the rules of heat, fire and passage say. */
final class Messages extends NLS {

	public static String BurningAboveCooktopCheck_Above;
	public static String BurningBesideRangeCheck_Beside;
	public static String BurningNearFireCheck_Near;
	public static String BurningNearFireCheck_Proud;
	public static String BurningNearHeaterCheck_Ask;
	public static String BurningNearHeaterCheck_Moulding;
	public static String BurningNearHeaterCheck_Thing;
	public static String HandrailCrowdedCheck_Ask;
	public static String HandrailCrowdedCheck_Near;
	public static String LargeFoamTrimCheck_Room;
	public static String NarrowHallCheck_Room;

	static {
		initializeMessages("wainscribe.rules.heat.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
