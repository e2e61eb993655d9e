// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.session;

/** Is told what happens to a profile that is open, in the user interface thread. */
@FunctionalInterface
public interface ProfileListener {

	/** Another draft, another trial or another backdrop is shown, or what there is to save differs. */
	void profileChanged();
}
