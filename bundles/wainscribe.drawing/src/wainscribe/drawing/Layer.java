// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

import java.util.List;
import java.util.Objects;

/**
 * The shapes of one layer.
 *
 * @param name   which layer
 * @param shapes in the order in which they are painted; may be empty
 */
public record Layer(LayerName name, List<Shape> shapes) {

	/** Refuses null and copies the list. */
	public Layer {
		Objects.requireNonNull(name);
		shapes = List.copyOf(shapes);
	}
}
