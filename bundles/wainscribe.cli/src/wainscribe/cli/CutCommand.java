// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import wainscribe.cli.json.CuttingJson;
import wainscribe.cli.text.CuttingText;
import wainscribe.cli.text.SingleLine;
import wainscribe.cutting.CuttingJob;
import wainscribe.cutting.CuttingPlan;
import wainscribe.cutting.CuttingPlanner;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.report.DesignServices;
import wainscribe.takeoff.cutting.CuttingFileException;
import wainscribe.takeoff.cutting.CuttingInput;

/** Plans which piece is cut from which length. */
@Command(name = "cut", mixinStandardHelpOptions = true, description = {
		"Which piece from which length: the plan that costs least, among those the one that leaves the longest piece over.",
		"Of a home: its cut list from the lengths of its briefs and price list and its offcuts; of files: what they say.",
		"Bare lengths in files are in the unit of their line \"# units: in\" or \"# units: mm\", else of --units, else in mm.",
		"Bare --kerf and --trim are in the unit of --units, else of the home or the file of the pieces, else in mm.",
		"Exit code 1: there is not enough stock; the best plan for the rest is given, with what is missing." })
final class CutCommand implements Callable<Integer> {

	@ArgGroup(multiplicity = "1")
	private Source source;

	@Option(names = "--accept", description = {
			"Keep the plan in the home: its leftovers become offcuts, the offcuts it cuts from are used up." })
	private boolean accept;

	@Mixin
	private CutOptions options;

	@Mixin
	private OutputOptions output;

	private final DesignServices services;
	private final Console console;

	CutCommand(DesignServices services, Console console) {
		this.services = services;
		this.console = console;
	}

	/** Where the pieces come from. */
	static final class Source {

		@ArgGroup(exclusive = false)
		private HomeOptions home;

		@ArgGroup(exclusive = false)
		private FileOptions files;
	}

	@Override
	public Integer call() throws BadInputException, IOException {
		if (accept && source.home == null) {
			throw BadInputException.option("--accept", "with --pieces", "--home DIR, only a home keeps a plan"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
		BigDecimal seconds = options.seconds();
		try (Interruption interruption = Interruption.listen()) {
			PlanProgress progress = new PlanProgress(console, seconds, interruption::isWished, System::nanoTime);
			int code = source.home == null ? planFiles(progress)
					: new HomeCut(services, console, options, output).run(source.home, accept, progress);
			interruption.endWith(code);
			return code;
		}
	}

	private int planFiles(PlanProgress progress) throws BadInputException {
		CuttingInput input = source.files.read(output.unitsOr(null));
		LengthUnit units = output.unitsOr(input.units());
		CuttingJob job = job(input, options.kerf(Length.ZERO, units), options.trim(Length.ZERO, units));
		tellOfBareLengths(input.bareFiles(), options.bare(units));
		CuttingPlan plan = new CuttingPlanner().plan(job, progress);
		if (output.isJson()) {
			console.json(CuttingJson.of(plan));
		} else {
			console.text(CuttingText.of(SingleLine.labels(plan), units == null ? LengthUnit.MILLIMETRE : units));
		}
		return plan.unplaced().isEmpty() ? ExitCode.DONE : ExitCode.REFUSED;
	}

	/** Says once, beside the result, that a unit was assumed: a wrong one makes a plan that looks right. */
	private void tellOfBareLengths(List<String> files, List<String> bareOptions) {
		List<String> places = new ArrayList<>(files);
		places.addAll(bareOptions);
		if (!places.isEmpty()) {
			console.progress("lengths without a unit are read as mm; if they are inches, write \"# units: in\" before the header" //$NON-NLS-1$
					+ " or give --units in (" + String.join(", ", places) + ')'); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	private static CuttingJob job(CuttingInput input, Length kerf, Length trim) throws BadInputException {
		try {
			return input.job(kerf, trim);
		} catch (CuttingFileException e) {
			throw new BadInputException(e.getMessage());
		}
	}
}
