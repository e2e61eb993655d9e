// SPDX-License-Identifier: EPL-2.0
/**
 * Colour of surfaces in numbers: spectra, observers, lights, CIELAB, adaptation, differences, and the nearest colour of a list.
 * <p>
 * Colours without a spectrum are CIELAB values for illuminant D65 and the 2 degree observer. Reflectance runs from 0 to 1, tristimulus values
 * so that a perfect white has Y = 100. This package and the other physics of finishes are the only places of the project that reckon in floating
 * point.
 */
package wainscribe.finishes.colour;
