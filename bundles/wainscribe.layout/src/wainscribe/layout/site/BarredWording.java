// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.solver.BarredCounts;
import wainscribe.layout.solver.RoomTask;
import wainscribe.model.Placed;

/** Says which things bar which numbers of frames: {@code The outlet at 62 1/4" bars 3 and 4 frames at any gap from ...}. */
final class BarredWording {

	private static final int MOST_LISTED = 3;

	private final Wording wording;
	private final List<Long> gaps;
	private final RoomTask task;

	BarredWording(Wording wording, List<Long> gaps, RoomTask task) {
		this.task = task;
		this.wording = wording;
		this.gaps = gaps;
	}

	/** Returns the sentence, empty if nothing is barred. */
	String sentence(List<Placed> elements, BarredCounts barred) {
		Map<String, List<String>> things = new LinkedHashMap<>();
		barred.byIsland().forEach((island, counts) -> things.computeIfAbsent(counts(counts, barred), key -> new ArrayList<>())
				.add(wording.thing(elements.get(island))));
		if (things.isEmpty()) {
			return ""; //$NON-NLS-1$
		}
		List<String> parts = things.entrySet().stream()
				.map(entry -> NLS.bind(entry.getValue().size() == 1 ? Messages.BarredWording_Bars : Messages.BarredWording_BarMany,
						Wording.list(entry.getValue()), entry.getKey()))
				.toList();
		String list = Wording.list(parts);
		String start = list.substring(0, 1).toUpperCase(Locale.ROOT) + list.substring(1);
		if (task.strips() != null) {
			return NLS.bind(Messages.BarredWording_Alone, start);
		}
		return gaps.size() == 1 ? NLS.bind(Messages.BarredWording_AtGap, start, wording.length(gaps.get(0)))
				: NLS.bind(Messages.BarredWording_AtAnyGap,
						new Object[] { start, wording.length(gaps.get(0)), wording.length(gaps.get(gaps.size() - 1)) });
	}

	private String counts(TreeSet<Integer> counts, BarredCounts barred) {
		if (counts.size() > 1 && barred.isEvery(counts)) {
			return NLS.bind(Messages.BarredWording_Every, Wording.parts(counts.last(), task));
		}
		if (counts.size() > MOST_LISTED && counts.last() - counts.first() == counts.size() - 1) {
			return NLS.bind(Messages.BarredWording_FromTo, counts.first(), Wording.parts(counts.last(), task));
		}
		List<String> words = new ArrayList<>(counts.stream().map(String::valueOf).toList());
		words.set(words.size() - 1, Wording.parts(counts.last(), task));
		return Wording.list(words);
	}
}
