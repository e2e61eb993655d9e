// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes the names of many pieces shortly: {@code A1 to A6: top, bottom}. */
final class PieceNames {

	private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d{1,9})"); //$NON-NLS-1$
	private static final int SHORTEST_RANGE = 3;

	private PieceNames() {
	}

	/** A name that ends in a number. */
	private record Numbered(String stem, int number) {
	}

	/**
	 * Writes names together.
	 *
	 * @param labels names such as {@code A1/top}
	 */
	static String together(List<String> labels) {
		Map<String, List<String>> sidesOf = new LinkedHashMap<>();
		for (String label : labels) {
			int slash = label.lastIndexOf('/');
			sidesOf.computeIfAbsent(slash < 0 ? label : label.substring(0, slash), key -> new ArrayList<>())
					.add(slash < 0 ? "" : label.substring(slash + 1));
		}
		Map<List<String>, List<String>> bySides = new LinkedHashMap<>();
		sidesOf.forEach((owner, sides) -> bySides.computeIfAbsent(sides, key -> new ArrayList<>()).add(owner));
		return bySides.entrySet().stream().map(entry -> {
			String sides = String.join(", ", entry.getKey());
			return String.join(", ", ranges(entry.getValue())) + (sides.isEmpty() ? "" : ": " + sides);
		}).collect(Collectors.joining("; "));
	}

	/** Three or more names that count on are written as a range. */
	private static List<String> ranges(List<String> names) {
		List<String> written = new ArrayList<>();
		int from = 0;
		while (from < names.size()) {
			int to = from;
			while (to + 1 < names.size() && follows(names.get(to), names.get(to + 1))) {
				to++;
			}
			if (to - from + 1 >= SHORTEST_RANGE) {
				written.add(names.get(from) + " to " + names.get(to));
			} else {
				written.addAll(names.subList(from, to + 1));
			}
			from = to + 1;
		}
		return written;
	}

	private static boolean follows(String name, String next) {
		Numbered one = numbered(name);
		return one != null && new Numbered(one.stem(), one.number() + 1).equals(numbered(next));
	}

	/** Returns null for a name without a number at its end. */
	private static Numbered numbered(String name) {
		Matcher matcher = NUMBERED.matcher(name);
		return matcher.matches() ? new Numbered(matcher.group(1), Integer.parseInt(matcher.group(2))) : null;
	}
}
