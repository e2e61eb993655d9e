// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.desk;

/** What can be taken hold of in a section. Counted along the outline as {@code SectionEdit} counts; equal keys are one thing. */
public sealed interface NodeKey {

	/**
	 * A point of the outline.
	 *
	 * @param point its number
	 */
	record OfPoint(int point) implements NodeKey {
	}

	/**
	 * A segment of the outline.
	 *
	 * @param segment its number
	 */
	record OfSegment(int segment) implements NodeKey {
	}

	/**
	 * What bends a segment.
	 *
	 * @param segment number of the segment
	 * @param grip    which of its handles
	 */
	record OfHandle(int segment, Grip grip) implements NodeKey {
	}
}
