// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The columns made so far for one profile, which later master problems start from. */
final class ColumnPool {

	private static final int MOST = 6000;

	private final Set<Column> columns = new LinkedHashSet<>();

	boolean add(Column column) {
		return columns.add(column);
	}

	/** Adds the patterns of a packing. */
	void add(Packing packing) {
		packing.uses().forEach(use -> add(Column.of(packing.task(), use.pattern())));
	}

	/** Adds, for each item and each bar type, as many of the item as fit, the room filled with shorter ones. */
	void addSimple(CuttingTask task) {
		for (int k = 0; k < task.bars().size(); k++) {
			for (int first = 0; first < task.items(); first++) {
				long room = task.bars().get(k).capacity();
				int[] counts = new int[task.items()];
				for (int i = first; i < counts.length; i++) {
					counts[i] = (int) Math.min(task.demand(i), room / task.weight(i));
					room -= counts[i] * task.weight(i);
				}
				if (counts[first] > 0) {
					add(Column.of(task, new Pattern(k, counts)));
				}
			}
		}
	}

	/** Returns the columns that fit bars there are and hold no more of an item than is wanted. */
	List<Column> fitting(CuttingTask task, int[] demand, int[] limits) {
		List<Column> fitting = new ArrayList<>();
		int skip = Math.max(0, columns.size() - MOST);
		for (Column column : columns) {
			if (skip-- > 0) {
				continue;
			}
			if (fits(column, demand)) {
				if (limits[column.bar()] > 0 && column.weight() <= task.bars().get(column.bar()).capacity()) {
					fitting.add(column);
				}
			}
		}
		return fitting;
	}

	private static boolean fits(Column column, int[] demand) {
		for (int j = 0; j < column.items().length; j++) {
			if (column.counts()[j] > demand[column.items()[j]]) {
				return false;
			}
		}
		return true;
	}
}
