// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import java.util.ArrayList;
import java.util.List;

import wainscribe.report.view.StickView;
import wainscribe.report.view.StickView.MarkView;

/**
 * One strip of a story stick; measures in millimetres from the stick's datum.
 *
 * @param stick  the stick
 * @param number from 1
 * @param count  of all its strips
 * @param from   where its left register cross is, or the datum
 * @param to     where its right register cross is, or the end
 * @param marks  the marks on it, those in its overlaps among them
 */
record StickStrip(StickView stick, int number, int count, double from, double to, List<MarkView> marks) {

	private static final double NOTHING = 1e-6;

	/** Divides a stick; it takes one strip at least. */
	static List<StickStrip> of(StickView stick, StripScale scale) {
		int count = Math.max(1, (int) Math.ceil((stick.length() - NOTHING) / scale.carried()));
		List<StickStrip> strips = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			double from = i * scale.carried();
			double to = Math.min(stick.length(), from + scale.carried());
			double least = i == 0 ? -NOTHING : from - scale.overlap();
			double most = i == count - 1 ? to + NOTHING : to + scale.overlap();
			List<MarkView> marks = stick.marks().stream().filter(mark -> mark.at() >= least && mark.at() <= most).toList();
			strips.add(new StickStrip(stick, i + 1, count, from, to, marks));
		}
		return strips;
	}

	boolean isFirst() {
		return number == 1;
	}

	boolean isLast() {
		return number == count;
	}
}
