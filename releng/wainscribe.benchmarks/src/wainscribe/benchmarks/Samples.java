// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Numbers of which the middle one counts, so that a pause of the machine does not. */
public final class Samples {

	private final List<Double> values = new ArrayList<>();

	/** Runs something and returns the nanoseconds it took. */
	static long nanos(Runnable work) {
		long from = System.nanoTime();
		work.run();
		return System.nanoTime() - from;
	}

	/** Adds a number. */
	public void add(double value) {
		values.add(value);
	}

	int count() {
		return values.size();
	}

	/** Returns the middle one. */
	public double median() {
		return share(0.5);
	}

	/** Returns the value that a share of all values lies below. */
	public double share(double share) {
		List<Double> sorted = new ArrayList<>(values);
		Collections.sort(sorted);
		return sorted.get((int) Math.min(sorted.size() - 1.0, sorted.size() * share));
	}

	/** Returns the largest. */
	public double most() {
		return Collections.max(values);
	}

	/** Returns the smallest. */
	public double least() {
		return Collections.min(values);
	}
}
