// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.desk;

/** The handles that bend a segment. */
public enum Grip {
	/** Where a curve heads for from its start. */
	LEAVES,
	/** Where a curve comes from at its end. */
	ARRIVES,
	/** The middle of an arc. */
	MIDDLE
}
