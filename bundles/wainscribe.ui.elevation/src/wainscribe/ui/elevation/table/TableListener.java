// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

/** Is told what is to be seen on a drawing table, in the user interface thread. */
public interface TableListener {

	/** The room is another object: everything begins anew. */
	default void roomReplaced() {
		// of no interest to most
	}

	/** The drawings follow a changed design, scale, choice of layers or appearance. */
	default void drawingsChanged() {
		// of no interest to most
	}

	/** The drawings show what a drag would lead to; the model is unchanged again when this returns. */
	default void trialShown() {
		// of no interest to most
	}
}
