// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour.list;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

import wainscribe.finishes.colour.Spectrum;

/**
 * Turns readings at some wavelengths into a {@link Spectrum}: straight between readings, level beyond the first and last (as ASTM E308 does for
 * missing ends).
 */
final class SpectrumSamples {

	/** The widest gap between readings, in nm. */
	static final int WIDEST = 20;
	/** Readings start no later and end no earlier than here, in nm. */
	static final int FROM = 400;
	static final int TO = 700;

	private SpectrumSamples() {
	}

	/** Returns what is wrong with a set of wavelengths, or an empty text. */
	static String fault(NavigableMap<Integer, ?> readings) {
		if (readings.isEmpty() || readings.firstKey() > FROM || readings.lastKey() < TO) {
			return "expected readings from 400 to 700 nm at least"; //$NON-NLS-1$
		}
		int before = readings.firstKey();
		for (int wavelength : readings.keySet()) {
			if (wavelength - before > WIDEST) {
				return "a gap from " + before + " to " + wavelength + " nm; expected a reading every " + WIDEST + " nm at least"; //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
			}
			before = wavelength;
		}
		return ""; //$NON-NLS-1$
	}

	/** Returns the spectrum of readings that have no {@link #fault}. */
	static Spectrum spectrum(TreeMap<Integer, Double> readings) {
		return Spectrum.of(nm -> {
			Map.Entry<Integer, Double> low = readings.floorEntry((int) nm);
			Map.Entry<Integer, Double> high = readings.ceilingEntry((int) nm);
			if (low == null) {
				return high.getValue();
			}
			if (high == null || high.getKey().equals(low.getKey())) {
				return low.getValue();
			}
			double share = (nm - low.getKey()) / (high.getKey() - low.getKey());
			return low.getValue() + share * (high.getValue() - low.getValue());
		});
	}
}
