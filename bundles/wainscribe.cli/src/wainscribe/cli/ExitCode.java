// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

/** What a command tells the shell. */
final class ExitCode {

	/** Done. */
	static final int DONE = 0;
	/** There are findings of error level, or the request has no solution. */
	static final int REFUSED = 1;
	/** Bad usage or input; nothing was written. */
	static final int BAD_INPUT = 2;

	private ExitCode() {
	}
}
