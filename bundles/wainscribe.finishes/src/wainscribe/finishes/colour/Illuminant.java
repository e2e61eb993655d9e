// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

import java.util.Objects;

/**
 * A light to see colours by.
 *
 * @param id how it is asked for, for instance {@code A} or {@code 2700K}
 * @param power its relative power over the wavelengths
 */
public record Illuminant(String id, Spectrum power) {

	/** Refuses nulls. */
	public Illuminant {
		Objects.requireNonNull(id);
		Objects.requireNonNull(power);
	}
}
