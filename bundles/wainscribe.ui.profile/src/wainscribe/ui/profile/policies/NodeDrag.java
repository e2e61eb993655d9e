// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.policies;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;

/** What a drag says beside how far it goes: which node is held, and whether it is to be free of lines. */
public final class NodeDrag {

	private static final String HELD = "wainscribe.held"; //$NON-NLS-1$
	private static final String FREE = "wainscribe.free"; //$NON-NLS-1$

	private NodeDrag() {
	}

	/** Notes in a request what is held. */
	@SuppressWarnings("unchecked")
	public static void note(Request request, EditPart held, boolean free) {
		request.getExtendedData().put(HELD, held);
		request.getExtendedData().put(FREE, free);
	}

	static Object held(Request request) {
		return request.getExtendedData().get(HELD);
	}

	static boolean isFree(Request request) {
		return Boolean.TRUE.equals(request.getExtendedData().get(FREE));
	}
}
