// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

/** How results are written to standard output. */
enum OutputFormat {
	/** For people. */
	text,
	/** For scripts: lengths in millimetres, exact. */
	json
}
