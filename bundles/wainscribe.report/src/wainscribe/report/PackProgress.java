// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

/** Hears how far the writing of a pack is, and may stop it. */
public interface PackProgress {

	/** Hears nothing and never stops. */
	PackProgress NONE = new PackProgress() {
		@Override
		public void step(String what, int done, int total) {
			// Nobody listens.
		}

		@Override
		public boolean isCancelled() {
			return false;
		}
	};

	/**
	 * Tells what begins now.
	 *
	 * @param what  the step, for the user
	 * @param done  steps behind, from 0
	 * @param total all steps
	 */
	void step(String what, int done, int total);

	/** Tells whether the user wants to stop; asked before each step. */
	boolean isCancelled();
}
