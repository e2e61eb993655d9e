// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;

import wainscribe.drawing.LayerName;
import wainscribe.model.Home;
import wainscribe.model.length.LengthUnit;

/**
 * How an elevation is drawn.
 *
 * @param unit   unit of the written measures
 * @param scale  how many millimetres on the wall one millimetre of paper stands for; sizes letters and ticks; above zero
 * @param relief whether mouldings are shaded facet by facet; false: plain faces, which paint faster
 * @param layers the layers wanted
 */
public record ElevationOptions(LengthUnit unit, double scale, boolean relief, Set<LayerName> layers) {

	private static final double USUAL_SCALE = 20;

	/** Refuses nulls and a scale of nothing, copies the set. */
	public ElevationOptions {
		Objects.requireNonNull(unit);
		layers = Set.copyOf(layers);
		if (!(scale > 0)) {
			throw new IllegalArgumentException("scale " + scale + ": expected above 0");
		}
	}

	/** Returns the options for a home: its unit, 1:20, relief, all layers. */
	public static ElevationOptions of(Home home) {
		return new ElevationOptions(home.getUnits() == null ? LengthUnit.MILLIMETRE : home.getUnits(), USUAL_SCALE, true,
				EnumSet.allOf(LayerName.class));
	}

	/** Returns the options with another scale. */
	public ElevationOptions withScale(double other) {
		return new ElevationOptions(unit, other, relief, layers);
	}

	/** Returns the options with other layers. */
	public ElevationOptions withLayers(Set<LayerName> others) {
		return new ElevationOptions(unit, scale, relief, others);
	}

	/** Returns the options with or without shading. */
	public ElevationOptions withRelief(boolean shaded) {
		return new ElevationOptions(unit, scale, shaded, layers);
	}

	/** Returns the options with another unit. */
	public ElevationOptions withUnit(LengthUnit other) {
		return new ElevationOptions(other, scale, relief, layers);
	}
}
