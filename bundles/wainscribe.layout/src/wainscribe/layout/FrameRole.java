// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout;

/** Why a frame is where it is. */
public enum FrameRole {
	/** One of the frames that share a run by the rhythm of the pattern. */
	RUN,
	/** Under a window, of its cased width and on its centre. */
	ANCHOR,
	/** Under or over an opening that reaches into the tier. */
	BAY,
	/** Placed and locked by hand. */
	PLACED
}
