// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.placing;

/** From where frames are measured when they are carried over to a wall of another length. */
public enum Start {
	/** Each as far from the left end as on its own wall. */
	LEFT_END,
	/** Each as far from the middle of the wall as on its own. */
	MIDDLE
}
