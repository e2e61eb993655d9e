// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import wainscribe.drawing.Subject;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/**
 * A place that a dimension string marks.
 *
 * @param at      distance from the datum
 * @param subject what is there
 */
record Mark(Length at, Subject subject) {

	/** Returns the marks in their order; of several on one tape mark the first one named stays. */
	static List<Mark> inOrder(List<Mark> marks, LengthUnit unit) {
		List<Mark> sorted = new ArrayList<>(marks);
		sorted.sort(Comparator.comparing(Mark::at));
		List<Mark> distinct = new ArrayList<>();
		for (Mark mark : sorted) {
			Length rounded = mark.at().roundedTo(unit.tapeMark());
			if (distinct.isEmpty() || !distinct.getLast().at().roundedTo(unit.tapeMark()).equals(rounded)) {
				distinct.add(mark);
			}
		}
		return distinct;
	}

	/** Writes a measure as a carpenter reads it: {@code 6' 1 1/2"} or {@code 1842}, rounded once to the tape. */
	static String text(Length length, LengthUnit unit) {
		if (length.signum() == 0) {
			return "0";
		}
		String text = LengthFormat.asTapeMark(length, unit);
		return unit == LengthUnit.MILLIMETRE ? text.replace(" mm", "") : text;
	}
}
