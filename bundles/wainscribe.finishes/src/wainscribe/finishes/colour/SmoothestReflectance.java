// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

import org.ojalgo.matrix.decomposition.LU;
import org.ojalgo.matrix.store.MatrixStore;
import org.ojalgo.matrix.store.R064Store;

/**
 * The smoothest reflectance between 0 and 1 that gives a colour under D65: a stand-in for the spectrum of a paint of which only the colour is
 * known. Real pigments differ; what is said from it is an estimate.
 * <p>
 * Reflectance is (tanh z + 1) / 2, and the sum of squared steps of z is least. Source: Burns 2020, Numerical methods for smoothest reflectance
 * reconstruction, Color Research and Application 45(1), 8-21, doi 10.1002/col.22437 (least hyperbolic tangent slope squared). Solved by
 * Newton's method with halved steps.
 */
final class SmoothestReflectance {

	/** Beyond this a reflectance is so near 0 or 1 that no eye tells. */
	private static final double STEEPEST = 8;
	private static final int SIZE = Spectrum.SIZE;
	private static final int STEPS = 60;
	private static final double CLOSE = 1e-9;

	private final double[][] weights;

	/** Prepares for an observer; colours are under D65. */
	SmoothestReflectance(Observer observer) {
		weights = observer.weights(Illuminants.D65);
		for (double[] row : weights) {
			for (int i = 0; i < SIZE; i++) {
				row[i] /= 100;
			}
		}
	}

	/** Returns the reflectance; of a colour that no surface can have, the one the search ends at, which is near it. */
	Spectrum of(Xyz colour) {
		double[] wanted = { colour.x() / 100, colour.y() / 100, colour.z() / 100 };
		double[] unknowns = new double[SIZE + 3];
		double start = Math.clamp(wanted[1], 0.01, 0.99);
		for (int i = 0; i < SIZE; i++) {
			unknowns[i] = atanh(2 * start - 1);
		}
		double[] residual = residual(unknowns, wanted);
		for (int step = 0; step < STEPS && norm(residual) > CLOSE; step++) {
			double[] change = change(unknowns, residual);
			double share = 1;
			double[] next = moved(unknowns, change, share);
			double[] nextResidual = residual(next, wanted);
			while (norm(nextResidual) > norm(residual) && share > 1e-4) {
				share /= 2;
				next = moved(unknowns, change, share);
				nextResidual = residual(next, wanted);
			}
			unknowns = next;
			residual = nextResidual;
		}
		double[] z = unknowns;
		return Spectrum.of(nm -> reflectance(z[(int) (nm - Spectrum.FIRST) / Spectrum.STEP]));
	}

	/** What is left of the conditions: slope of the Lagrangian by each z, then the colour still missed. */
	private double[] residual(double[] unknowns, double[] wanted) {
		double[] residual = new double[SIZE + 3];
		for (int i = 0; i < SIZE; i++) {
			double curve = (i > 0 ? unknowns[i] - unknowns[i - 1] : 0) + (i < SIZE - 1 ? unknowns[i] - unknowns[i + 1] : 0);
			residual[i] = 2 * curve + slope(unknowns[i]) * pull(unknowns, i);
		}
		for (int c = 0; c < 3; c++) {
			double sum = -wanted[c];
			for (int i = 0; i < SIZE; i++) {
				sum += weights[c][i] * reflectance(unknowns[i]);
			}
			residual[SIZE + c] = sum;
		}
		return residual;
	}

	private double[] change(double[] unknowns, double[] residual) {
		R064Store jacobian = R064Store.FACTORY.make(SIZE + 3, SIZE + 3);
		for (int i = 0; i < SIZE; i++) {
			double slope = slope(unknowns[i]);
			jacobian.set(i, i, (i == 0 || i == SIZE - 1 ? 2 : 4) - 2 * slope * Math.tanh(unknowns[i]) * pull(unknowns, i));
			if (i > 0) {
				jacobian.set(i, i - 1, -2);
				jacobian.set(i - 1, i, -2);
			}
			for (int c = 0; c < 3; c++) {
				jacobian.set(i, SIZE + c, slope * weights[c][i]);
				jacobian.set(SIZE + c, i, slope * weights[c][i]);
			}
		}
		LU<Double> solver = LU.R064.make(jacobian);
		solver.decompose(jacobian);
		MatrixStore<Double> solution = solver.getSolution(R064Store.FACTORY.column(residual));
		return solution.toRawCopy1D();
	}

	private double pull(double[] unknowns, int i) {
		return unknowns[SIZE] * weights[0][i] + unknowns[SIZE + 1] * weights[1][i] + unknowns[SIZE + 2] * weights[2][i];
	}

	private static double[] moved(double[] unknowns, double[] change, double share) {
		double[] next = unknowns.clone();
		for (int i = 0; i < next.length; i++) {
			double step = Double.isFinite(change[i]) ? share * change[i] : 0;
			next[i] = i < SIZE ? Math.clamp(unknowns[i] - step, -STEEPEST, STEEPEST) : unknowns[i] - step;
		}
		return next;
	}

	private static double reflectance(double z) {
		return (Math.tanh(z) + 1) / 2;
	}

	private static double slope(double z) {
		double tanh = Math.tanh(z);
		return (1 - tanh * tanh) / 2;
	}

	private static double atanh(double value) {
		return 0.5 * Math.log((1 + value) / (1 - value));
	}

	private static double norm(double[] values) {
		double sum = 0;
		for (double value : values) {
			sum += value * value;
		}
		return Math.sqrt(sum);
	}
}
