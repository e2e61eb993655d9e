// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

import java.util.List;
import java.util.Objects;

import wainscribe.model.length.Length;

/**
 * A measure with its lines and its text: a distance between two marks, or a running mark from a datum.
 *
 * @param subject what is measured
 * @param axis    direction of the measure
 * @param from    where it begins along the axis; for a running mark the datum
 * @param to      where it ends
 * @param label   its text
 * @param lines   dimension line, ticks and leader
 */
public record Dimension(Subject subject, Axis axis, Length from, Length to, Label label, List<Path> lines)
		implements Shape {

	/** Direction of a measure. */
	public enum Axis {
		/** Along the wall. */
		LEVEL,
		/** Up the wall. */
		PLUMB
	}

	/** Refuses nulls and copies the list. */
	public Dimension {
		Objects.requireNonNull(subject);
		Objects.requireNonNull(axis);
		Objects.requireNonNull(from);
		Objects.requireNonNull(to);
		Objects.requireNonNull(label);
		lines = List.copyOf(lines);
	}

	/** Returns the exact length measured. */
	public Length length() {
		return to.minus(from);
	}

	@Override
	public Role role() {
		return label.role();
	}

	@Override
	public Bounds bounds() {
		Bounds bounds = label.bounds();
		for (Path line : lines) {
			bounds = bounds.union(line.bounds());
		}
		return bounds;
	}
}
