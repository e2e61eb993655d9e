// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.List;

/**
 * A pack as its pages show it: only text and drawings, so that page and book tell the same.
 *
 * @param title    name of the home
 * @param unit     how lengths are written, for the notes under tables
 * @param measured what was measured
 * @param proposed what is proposed
 * @param findings open findings of all rooms
 * @param cautions what can hurt someone
 * @param rooms    the rooms in their order
 * @param shopping what all rooms take together
 * @param totals   sums of that
 * @param cutting  which piece comes from which length
 * @param css      rules for the drawings
 */
public record PackView(String title, String unit, List<Fact> measured, List<Fact> proposed, List<FindingView> findings,
		List<Caution> cautions, List<RoomView> rooms, List<QuantityRow> shopping, List<Fact> totals, CuttingView cutting, String css) {

	/** Copies the lists. */
	public PackView {
		measured = List.copyOf(measured);
		proposed = List.copyOf(proposed);
		findings = List.copyOf(findings);
		cautions = List.copyOf(cautions);
		rooms = List.copyOf(rooms);
		shopping = List.copyOf(shopping);
		totals = List.copyOf(totals);
	}

	/** Returns the findings that have to be mended or need a reason to stay. */
	public List<FindingView> urgent() {
		return findings.stream().filter(finding -> !finding.isAdvice()).toList();
	}

	/** Returns the findings that are guidelines. */
	public List<FindingView> advice() {
		return findings.stream().filter(FindingView::isAdvice).toList();
	}
}
