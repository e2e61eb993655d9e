// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

/** One of the two handles of a Bezier curve. */
public enum CurveHandle {
	/** The handle towards which the curve leaves its start. */
	FIRST,
	/** The handle from which it reaches its end. */
	SECOND
}
