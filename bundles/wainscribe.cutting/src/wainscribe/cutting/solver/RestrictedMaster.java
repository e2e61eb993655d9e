// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The linear master problem over the columns known so far: enough of every item, not more bars than there are, least cost (Gilmore
 * and Gomory 1961). What is missing of an item may be had at a high cost, so there is always a solution.
 * <p>
 * A revised simplex with a dense inverse of its own: its problems have few rows and most of its work is to go on after some columns
 * were added, for which general libraries start again.
 */
final class RestrictedMaster {

	private static final double EPSILON = 1e-9;
	private static final double SMALLEST_PIVOT = 1e-7;
	private static final int REFACTOR = 120;
	private static final int CANDIDATES = 120;

	private final int items;
	private final int rows;
	private final int[] rowOf;
	private final double[] costs;
	private final double[] missingCosts;
	private final double[] demand;
	private final List<Column> columns = new ArrayList<>();
	private final List<Column> compact = new ArrayList<>();
	private final BasisInverse inverse;
	private final int[] basis;
	private final double[] level;
	private final double[] duals;
	private final double[] direction;
	private int[] candidates = {};
	private int pivots;

	/**
	 * Starts with everything missing.
	 *
	 * @param wanted       number wanted of each item; those not wanted get no row
	 * @param limits       number of bars of each type
	 * @param costs        cost of a bar of each type
	 * @param missingCosts cost of each item that is missing
	 */
	RestrictedMaster(int[] wanted, int[] limits, double[] costs, double[] missingCosts) {
		this.costs = costs;
		rowOf = new int[wanted.length];
		int count = 0;
		for (int i = 0; i < wanted.length; i++) {
			rowOf[i] = wanted[i] > 0 ? count++ : -1;
		}
		items = count;
		rows = items + limits.length;
		this.missingCosts = new double[items];
		demand = new double[rows];
		for (int i = 0; i < wanted.length; i++) {
			if (rowOf[i] >= 0) {
				demand[rowOf[i]] = wanted[i];
				this.missingCosts[rowOf[i]] = missingCosts[i];
			}
		}
		for (int k = 0; k < limits.length; k++) {
			demand[items + k] = limits[k];
		}
		inverse = new BasisInverse(rows, items);
		basis = new int[rows];
		level = demand.clone();
		duals = new double[rows];
		direction = new double[rows];
		for (int r = 0; r < rows; r++) {
			basis[r] = -1 - r;
			duals[r] = r < items ? this.missingCosts[r] : 0;
		}
	}

	/** Adds a column of items that are wanted. */
	void add(Column column) {
		columns.add(column);
		compact.add(new Column(column.bar(), Arrays.stream(column.items()).map(item -> rowOf[item]).toArray(), column.counts(), column.weight()));
	}

	/** Solves over the columns there are; false if that took too many steps. */
	boolean solve() {
		int most = 200 * rows + 2000;
		for (int step = 0; step < most; step++) {
			int entering = entering();
			if (entering == Integer.MIN_VALUE) {
				return true;
			}
			if (!pivot(entering)) {
				return false;
			}
		}
		return false;
	}

	/**
	 * The most promising column. Codes: 0 and up a pattern; -1-r the missing item or unused bar of row r; -1-rows-r the surplus of
	 * item r.
	 */
	private int entering() {
		int best = Integer.MIN_VALUE;
		double least = -EPSILON * 10;
		int column = promising();
		if (column >= 0) {
			best = column;
			least = reducedCost(compact.get(column));
		}
		for (int r = 0; r < rows; r++) {
			double missing = (r < items ? missingCosts[r] : 0) - duals[r];
			if (missing < least) {
				least = missing;
				best = -1 - r;
			}
			if (r < items && duals[r] < least) {
				least = duals[r];
				best = -1 - rows - r;
			}
		}
		return best;
	}

	/** The best of the columns that looked good last time all were looked at; all are only looked at when none of those is left. */
	private int promising() {
		int best = bestOf(candidates);
		if (best < 0) {
			double[] reduced = new double[compact.size()];
			double least = 0;
			for (int c = 0; c < reduced.length; c++) {
				reduced[c] = reducedCost(compact.get(c));
				least = Math.min(least, reduced[c]);
			}
			double share = least / 3;
			candidates = IntStream.range(0, reduced.length).filter(c -> reduced[c] < share).limit(CANDIDATES).toArray();
			best = bestOf(candidates);
		}
		return best;
	}

	private int bestOf(int[] some) {
		int best = -1;
		double least = -EPSILON * 10;
		for (int c : some) {
			double reduced = reducedCost(compact.get(c));
			if (reduced < least) {
				least = reduced;
				best = c;
			}
		}
		return best;
	}

	private double reducedCost(Column column) {
		double reduced = costs[column.bar()] - duals[items + column.bar()];
		int[] on = column.items();
		int[] counts = column.counts();
		for (int j = 0; j < on.length; j++) {
			reduced -= duals[on[j]] * counts[j];
		}
		return reduced;
	}

	private double reducedCost(int code) {
		if (code >= 0) {
			return reducedCost(compact.get(code));
		}
		int row = -1 - code;
		return row < rows ? cost(code) - duals[row] : duals[row - rows];
	}

	private double cost(int code) {
		if (code >= 0) {
			return costs[columns.get(code).bar()];
		}
		int row = -1 - code;
		return row < items ? missingCosts[row] : 0;
	}

	private boolean pivot(int code) {
		double saving = reducedCost(code);
		inverse.times(column(code), direction);
		int leaving = leaving();
		if (leaving < 0) {
			return false;
		}
		double step = Math.max(0, level[leaving] / direction[leaving]);
		for (int r = 0; r < rows; r++) {
			level[r] -= step * direction[r];
			if (level[r] < 0) {
				level[r] = 0;
			}
		}
		level[leaving] = step;
		basis[leaving] = code;
		inverse.pivot(leaving, direction);
		if (++pivots % REFACTOR == 0) {
			refactor();
			price();
		} else {
			inverse.addRow(leaving, saving, duals);
		}
		return true;
	}

	private int leaving() {
		int leaving = -1;
		double least = Double.POSITIVE_INFINITY;
		for (int r = 0; r < rows; r++) {
			if (direction[r] > SMALLEST_PIVOT) {
				double ratio = level[r] / direction[r];
				if (ratio < least - EPSILON || ratio < least + EPSILON && leaving >= 0 && direction[r] > direction[leaving]) {
					least = Math.min(least, ratio);
					leaving = r;
				}
			}
		}
		return leaving;
	}

	private Column column(int code) {
		if (code >= 0) {
			return compact.get(code);
		}
		int row = -1 - code;
		boolean surplus = row >= rows;
		return new Column(-1, new int[] {surplus ? row - rows : row}, new int[] {surplus ? -1 : 1}, 0);
	}

	private void refactor() {
		double[][] matrix = new double[rows][rows];
		for (int r = 0; r < rows; r++) {
			Column column = column(basis[r]);
			for (int j = 0; j < column.items().length; j++) {
				matrix[column.items()[j]][r] = column.counts()[j];
			}
			if (column.bar() >= 0) {
				matrix[items + column.bar()][r] = 1;
			}
		}
		if (inverse.invert(matrix)) {
			inverse.times(demand, level);
			for (int r = 0; r < rows; r++) {
				level[r] = Math.max(0, level[r]);
			}
		}
	}

	private void price() {
		double[] basic = new double[rows];
		for (int r = 0; r < rows; r++) {
			basic[r] = cost(basis[r]);
		}
		inverse.transposedTimes(basic, duals);
	}

	/** Returns the value of each item, not below zero. */
	double dual(int item) {
		return rowOf[item] < 0 ? 0 : Math.max(0, duals[rowOf[item]]);
	}

	/** Returns what one more bar of a type would save, not below zero. */
	double barDual(int bar) {
		return Math.max(0, -duals[items + bar]);
	}

	/** Returns the cost of the solution. */
	double cost() {
		double sum = 0;
		for (int r = 0; r < rows; r++) {
			sum += level[r] * cost(basis[r]);
		}
		return sum;
	}

	/** Returns how much is missing in all, in pieces. */
	double missing() {
		double sum = 0;
		for (int r = 0; r < rows; r++) {
			if (basis[r] < 0 && -1 - basis[r] < items) {
				sum += level[r];
			}
		}
		return sum;
	}

	/** A column and how often it is used. */
	record Share(Column column, double times) {
	}

	/** Returns the columns used. */
	List<Share> shares() {
		List<Share> shares = new ArrayList<>();
		for (int r = 0; r < rows; r++) {
			if (basis[r] >= 0 && level[r] > EPSILON) {
				shares.add(new Share(columns.get(basis[r]), level[r]));
			}
		}
		return shares;
	}
}
