// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting.solver;

import java.util.Arrays;

/** The inverse of the basis of the simplex method, dense. Items are the first rows, bar types the rows after them. */
final class BasisInverse {

	private static final double ZERO = 1e-13;

	private final int rows;
	private final int items;
	private double[][] inverse;

	BasisInverse(int rows, int items) {
		this.rows = rows;
		this.items = items;
		inverse = unit(rows);
	}

	private static double[][] unit(int rows) {
		double[][] unit = new double[rows][rows];
		for (int r = 0; r < rows; r++) {
			unit[r][r] = 1;
		}
		return unit;
	}

	/** Multiplies with a column; a bar of a type counts in the row after all items. */
	void times(Column column, double[] result) {
		int[] on = column.items();
		for (int r = 0; r < rows; r++) {
			double[] row = inverse[r];
			double sum = column.bar() >= 0 ? row[items + column.bar()] : 0;
			for (int j = 0; j < on.length; j++) {
				sum += row[on[j]] * column.counts()[j];
			}
			result[r] = sum;
		}
	}

	void times(double[] vector, double[] result) {
		for (int r = 0; r < rows; r++) {
			double sum = 0;
			for (int c = 0; c < rows; c++) {
				sum += inverse[r][c] * vector[c];
			}
			result[r] = sum;
		}
	}

	void transposedTimes(double[] vector, double[] result) {
		Arrays.fill(result, 0);
		for (int r = 0; r < rows; r++) {
			if (vector[r] != 0) {
				double[] row = inverse[r];
				for (int c = 0; c < rows; c++) {
					result[c] += vector[r] * row[c];
				}
			}
		}
	}

	/** Adds a multiple of a row to a vector. */
	void addRow(int row, double factor, double[] vector) {
		for (int c = 0; c < rows; c++) {
			vector[c] += factor * inverse[row][c];
		}
	}

	/** Replaces the basic column of a row. */
	void pivot(int leaving, double[] direction) {
		double[] pivotRow = inverse[leaving];
		double scale = 1 / direction[leaving];
		for (int c = 0; c < rows; c++) {
			pivotRow[c] *= scale;
		}
		for (int r = 0; r < rows; r++) {
			double factor = direction[r];
			if (r != leaving && Math.abs(factor) > ZERO) {
				double[] row = inverse[r];
				for (int c = 0; c < rows; c++) {
					row[c] -= factor * pivotRow[c];
				}
			}
		}
	}

	/** Inverts a matrix by elimination; leaves all as it is and returns false if it is singular. */
	boolean invert(double[][] matrix) {
		double[][] result = unit(rows);
		for (int c = 0; c < rows; c++) {
			int pivot = c;
			for (int r = c + 1; r < rows; r++) {
				pivot = Math.abs(matrix[r][c]) > Math.abs(matrix[pivot][c]) ? r : pivot;
			}
			if (Math.abs(matrix[pivot][c]) < 1e-11) {
				return false;
			}
			swap(matrix, pivot, c);
			swap(result, pivot, c);
			scale(matrix[c], result[c], matrix[c][c]);
			for (int r = 0; r < rows; r++) {
				if (r != c && matrix[r][c] != 0) {
					subtract(matrix[r], matrix[c], matrix[r][c], result[r], result[c]);
				}
			}
		}
		inverse = result;
		return true;
	}

	private static void swap(double[][] matrix, int a, int b) {
		double[] row = matrix[a];
		matrix[a] = matrix[b];
		matrix[b] = row;
	}

	private static void scale(double[] left, double[] right, double divisor) {
		for (int c = 0; c < left.length; c++) {
			left[c] /= divisor;
			right[c] /= divisor;
		}
	}

	private static void subtract(double[] left, double[] leftFrom, double factor, double[] right, double[] rightFrom) {
		for (int c = 0; c < left.length; c++) {
			left[c] -= factor * leftFrom[c];
			right[c] -= factor * rightFrom[c];
		}
	}
}
