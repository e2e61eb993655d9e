// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.desk;

/** Is told when the desk shows something else, or the same in another scale or in other colours. */
@FunctionalInterface
public interface DeskListener {

	/** Everything is to be placed and painted anew. */
	void deskChanged();
}
