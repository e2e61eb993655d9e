// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import picocli.CommandLine.Option;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthSyntaxException;
import wainscribe.model.length.LengthUnit;
import wainscribe.takeoff.cutting.WrittenLength;

/** The options that say how is sawn and how long is planned. */
final class CutOptions {

	private static final Pattern SECONDS = Pattern.compile("\\d{1,6}(\\.\\d{1,3})?"); //$NON-NLS-1$

	@Option(names = "--kerf", paramLabel = "LEN", description = {
			"Width of the saw cut (default: the home's decision; for files none)." })
	private String kerf;

	@Option(names = "--trim", paramLabel = "LEN", description = {
			"Comes off every bar before the first piece (default: the home's decision; for files none)." })
	private String trim;

	@Option(names = "--time", paramLabel = "SECONDS", defaultValue = "20", description = {
			"Planning ends after this time, or at Ctrl-C, with the best plan so far (default: ${DEFAULT-VALUE})." })
	private String time;

	/** Returns the width of the saw cut, or the given one. */
	Length kerf(Length otherwise, LengthUnit units) throws BadInputException {
		return kerf == null ? otherwise : length("--kerf", kerf, units); //$NON-NLS-1$
	}

	/** Returns the end trim, or the given one. */
	Length trim(Length otherwise, LengthUnit units) throws BadInputException {
		return trim == null ? otherwise : length("--trim", trim, units); //$NON-NLS-1$
	}

	/**
	 * Returns the options with bare lengths that are millimetres only because nothing says their unit.
	 *
	 * @param units unit of bare lengths, null if nothing says one
	 */
	List<String> bare(LengthUnit units) throws BadInputException {
		List<String> bare = new ArrayList<>();
		if (kerf != null && written("--kerf", kerf, units).isBare()) { //$NON-NLS-1$
			bare.add("--kerf"); //$NON-NLS-1$
		}
		if (trim != null && written("--trim", trim, units).isBare()) { //$NON-NLS-1$
			bare.add("--trim"); //$NON-NLS-1$
		}
		return bare;
	}

	/** Returns how many seconds the planning may take. */
	BigDecimal seconds() throws BadInputException {
		if (!SECONDS.matcher(time).matches() || new BigDecimal(time).signum() == 0) {
			throw BadInputException.option("--time", time, "seconds above zero, such as 10"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return new BigDecimal(time);
	}

	private static Length length(String option, String text, LengthUnit units) throws BadInputException {
		Length length = written(option, text, units).length();
		if (length.signum() < 0) {
			throw BadInputException.option(option, text, "a length of zero or more"); //$NON-NLS-1$
		}
		return length;
	}

	private static WrittenLength written(String option, String text, LengthUnit units) throws BadInputException {
		try {
			return WrittenLength.of(text, units);
		} catch (LengthSyntaxException e) {
			throw new BadInputException("option " + option + ": " + e.getMessage()); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}
}
