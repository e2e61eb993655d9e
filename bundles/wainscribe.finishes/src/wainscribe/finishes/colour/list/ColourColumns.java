// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour.list;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import wainscribe.finishes.colour.ColourSyntax;
import wainscribe.finishes.colour.SurfaceColour;

/** How the columns of a list give a colour: one kind a list. */
sealed interface ColourColumns {

	/** What a cell has that gives no colour. */
	record Fault(String column, String expected) {
	}

	/** A colour or a fault. */
	record Reading(Optional<SurfaceColour> colour, Fault fault) {

		static Reading of(SurfaceColour colour) {
			return new Reading(Optional.of(colour), null);
		}

		static Reading refused(String column, String expected) {
			return new Reading(Optional.empty(), new Fault(column, expected));
		}
	}

	/** Reads the colour of a row. */
	Reading read(List<String> cells);

	/** Three columns L, a and b: CIELAB under D65 for 2 degrees. */
	record InLab(int lightness, int a, int b) implements ColourColumns {

		@Override
		public Reading read(List<String> cells) {
			return ColourSyntax.parse("lab:" + cells.get(lightness) + ',' + cells.get(a) + ',' + cells.get(b)).map(Reading::of) //$NON-NLS-1$
					.orElseGet(() -> Reading.refused("L", '"' + cells.get(lightness) + ", " + cells.get(a) + ", " + cells.get(b) //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
							+ "\": expected L from 0 to 100, a and b from -200 to 200")); //$NON-NLS-1$
		}
	}

	/** One column srgb. */
	record InSrgb(int code) implements ColourColumns {

		@Override
		public Reading read(List<String> cells) {
			String text = cells.get(code).trim();
			return text.startsWith("#") ? ColourSyntax.parse(text).map(Reading::of).orElseGet(() -> refused(text)) : refused(text); //$NON-NLS-1$
		}

		private static Reading refused(String text) {
			return Reading.refused("srgb", '"' + text + "\": expected #rrggbb"); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	/** One column a wavelength, reflectance from 0 to 1. */
	record InWavelengths(Map<Integer, Integer> columns) implements ColourColumns {

		@Override
		public Reading read(List<String> cells) {
			TreeMap<Integer, Double> readings = new TreeMap<>();
			for (Map.Entry<Integer, Integer> column : columns.entrySet()) {
				String text = cells.get(column.getValue()).trim();
				double value = number(text);
				if (!(value >= 0 && value <= MOST)) {
					return Reading.refused(column.getKey().toString(), '"' + text + "\": expected a reflectance from 0 to 1"); //$NON-NLS-1$
				}
				readings.put(column.getKey(), value);
			}
			return Reading.of(new SurfaceColour.Measured(SpectrumSamples.spectrum(readings)));
		}

		private static double number(String text) {
			try {
				return Double.parseDouble(text);
			} catch (NumberFormatException e) {
				return Double.NaN;
			}
		}
	}

	/** Brighteners send back more than they get. */
	double MOST = 1.5;

	/** A wavelength as the name of a column. */
	Pattern WAVELENGTH = Pattern.compile("(\\d{3})(\\s?nm)?"); //$NON-NLS-1$

	/**
	 * Returns how a header gives colours.
	 *
	 * @throws ColourListException if it gives none or in several ways
	 */
	static ColourColumns of(List<String> header, String file, long row) throws ColourListException {
		boolean lab = header.contains("L") && header.contains("a") && header.contains("b"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		boolean srgb = header.contains("srgb"); //$NON-NLS-1$
		TreeMap<Integer, Integer> wavelengths = wavelengths(header);
		int kinds = (lab ? 1 : 0) + (srgb ? 1 : 0) + (wavelengths.isEmpty() ? 0 : 1);
		if (kinds != 1) {
			throw new ColourListException(file, row, "", (kinds == 0 ? "no columns of colour" : "colours in several ways") //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					+ "; expected either L,a,b or srgb or wavelengths such as 400,410, ... 700"); //$NON-NLS-1$
		}
		if (lab) {
			return new InLab(header.indexOf("L"), header.indexOf("a"), header.indexOf("b")); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
		if (srgb) {
			return new InSrgb(header.indexOf("srgb")); //$NON-NLS-1$
		}
		String fault = SpectrumSamples.fault(wavelengths);
		if (!fault.isEmpty()) {
			throw new ColourListException(file, row, "", fault); //$NON-NLS-1$
		}
		return new InWavelengths(Map.copyOf(wavelengths));
	}

	private static TreeMap<Integer, Integer> wavelengths(List<String> header) {
		TreeMap<Integer, Integer> found = new TreeMap<>();
		for (int i = 0; i < header.size(); i++) {
			Matcher matcher = WAVELENGTH.matcher(header.get(i));
			if (matcher.matches()) {
				found.put(Integer.valueOf(matcher.group(1)), i);
			}
		}
		return found;
	}
}
