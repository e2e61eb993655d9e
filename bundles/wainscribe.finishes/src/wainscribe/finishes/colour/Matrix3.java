// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

/** Three by three matrices of colour transforms. */
final class Matrix3 {

	private Matrix3() {
	}

	static Xyz times(double[][] m, Xyz v) {
		return new Xyz(m[0][0] * v.x() + m[0][1] * v.y() + m[0][2] * v.z(), m[1][0] * v.x() + m[1][1] * v.y() + m[1][2] * v.z(),
				m[2][0] * v.x() + m[2][1] * v.y() + m[2][2] * v.z());
	}

	static double[][] product(double[][] left, double[][] right) {
		double[][] product = new double[3][3];
		for (int row = 0; row < 3; row++) {
			for (int column = 0; column < 3; column++) {
				product[row][column] = left[row][0] * right[0][column] + left[row][1] * right[1][column] + left[row][2] * right[2][column];
			}
		}
		return product;
	}

	/** Returns the inverse by cofactors; the matrix must have one. */
	static double[][] inverse(double[][] m) {
		double[][] inverse = new double[3][3];
		double determinant = 0;
		for (int column = 0; column < 3; column++) {
			determinant += m[0][column] * cofactor(m, 0, column);
		}
		for (int row = 0; row < 3; row++) {
			for (int column = 0; column < 3; column++) {
				inverse[row][column] = cofactor(m, column, row) / determinant;
			}
		}
		return inverse;
	}

	private static double cofactor(double[][] m, int row, int column) {
		int r1 = (row + 1) % 3;
		int r2 = (row + 2) % 3;
		int c1 = (column + 1) % 3;
		int c2 = (column + 2) % 3;
		return m[r1][c1] * m[r2][c2] - m[r1][c2] * m[r2][c1];
	}
}
