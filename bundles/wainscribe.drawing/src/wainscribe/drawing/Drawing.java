// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

import wainscribe.model.length.LengthUnit;

/**
 * A drawing that knows no screen, paper or file; every backend paints the same one. Immutable.
 *
 * @param title  what is drawn
 * @param unit   unit of the written measures
 * @param scale  how many millimetres on the wall one millimetre of paper stands for, as chosen for the size of the letters
 * @param wall   bounds of the wall itself
 * @param extent bounds of everything, dimensions included
 * @param layers in the order in which they are painted
 */
public record Drawing(String title, LengthUnit unit, double scale, Bounds wall, Bounds extent, List<Layer> layers) {

	/** Refuses nulls and copies the list. */
	public Drawing {
		Objects.requireNonNull(title);
		Objects.requireNonNull(unit);
		Objects.requireNonNull(wall);
		Objects.requireNonNull(extent);
		layers = List.copyOf(layers);
	}

	/** Returns all shapes in the order in which they are painted. */
	public Stream<Shape> shapes() {
		return layers.stream().flatMap(layer -> layer.shapes().stream());
	}

	/** Returns the shapes of one layer; empty if the drawing has none. */
	public List<Shape> shapes(LayerName name) {
		return layers.stream().filter(layer -> layer.name() == name).flatMap(layer -> layer.shapes().stream()).toList();
	}

	/** Returns a drawing with only some of the layers; the extent stays, so that nothing moves on the screen. */
	public Drawing only(Set<LayerName> names) {
		return new Drawing(title, unit, scale, wall, extent,
				layers.stream().filter(layer -> names.contains(layer.name())).toList());
	}
}
