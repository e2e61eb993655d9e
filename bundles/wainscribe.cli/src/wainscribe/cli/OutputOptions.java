// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import picocli.CommandLine.Option;
import wainscribe.model.length.LengthUnit;

/** The options that every command has. */
final class OutputOptions {

	@Option(names = "--format", paramLabel = "text|json", defaultValue = "text", description = "Form of the result (default: ${DEFAULT-VALUE}).")
	private OutputFormat format;

	@Option(names = "--units", paramLabel = "in|mm", description = "Unit of text output and of bare lengths in options (default: the home's).")
	private LengthUnit units;

	boolean isJson() {
		return format == OutputFormat.json;
	}

	/** Returns the unit asked for, else the home's. */
	LengthUnit unitsOr(LengthUnit homeUnits) {
		return units == null ? homeUnits : units;
	}
}
