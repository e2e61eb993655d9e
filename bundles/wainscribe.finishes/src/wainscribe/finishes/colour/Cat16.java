// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

/**
 * Adaptation of the eye from one white to another by CAT16, complete (degree 1).
 * Source: Li et al. 2017, Color Research and Application 42(6), 703-718, doi 10.1002/col.22131.
 */
public final class Cat16 {

	private static final double[][] CONES = { { 0.401288, 0.650173, -0.051461 }, { -0.250268, 1.204414, 0.045854 },
			{ -0.002079, 0.048952, 0.953127 } };

	private final double[][] matrix;

	/** Prepares the way from the white {@code from} to the white {@code to}. */
	public Cat16(Xyz from, Xyz to) {
		double[] old = cones(from);
		double[] now = cones(to);
		double[][] scaled = new double[3][3];
		for (int row = 0; row < 3; row++) {
			for (int column = 0; column < 3; column++) {
				scaled[row][column] = CONES[row][column] * now[row] / old[row];
			}
		}
		matrix = Matrix3.product(Matrix3.inverse(CONES), scaled);
	}

	/** Returns the colour that looks alike under the other white. */
	public Xyz adapted(Xyz colour) {
		return Matrix3.times(matrix, colour);
	}

	private static double[] cones(Xyz white) {
		Xyz cones = Matrix3.times(CONES, white);
		return new double[] { cones.x(), cones.y(), cones.z() };
	}
}
