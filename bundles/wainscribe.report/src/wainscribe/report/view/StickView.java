// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.List;

/**
 * A story stick, as it is printed.
 *
 * @param title   room, wall and what is marked
 * @param upwards whether it stands on the floor
 * @param length  millimetres from the datum to its end
 * @param marks   from the datum on
 */
public record StickView(String title, boolean upwards, double length, List<MarkView> marks) {

	/**
	 * A mark.
	 *
	 * @param at   millimetres from the datum
	 * @param text its place on the tape and what is there
	 */
	public record MarkView(double at, String text) {
	}

	/** Copies the list. */
	public StickView {
		marks = List.copyOf(marks);
	}
}
