// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.List;

/**
 * The cutting plan as pages show it.
 *
 * @param facts    what it costs and how it is sawn
 * @param notes    what is missing or not priced
 * @param buys     what to buy
 * @param bars     bars still to be cut
 * @param accepted bars of accepted plans
 */
public record CuttingView(List<Fact> facts, List<String> notes, List<Fact> buys, List<BarView> bars, List<BarView> accepted) {

	/** Copies the lists. */
	public CuttingView {
		facts = List.copyOf(facts);
		notes = List.copyOf(notes);
		buys = List.copyOf(buys);
		bars = List.copyOf(bars);
		accepted = List.copyOf(accepted);
	}

	/** Tells whether there is nothing to cut. */
	public boolean isEmpty() {
		return bars.isEmpty() && accepted.isEmpty() && notes.isEmpty();
	}
}
