// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.math.BigDecimal;
import java.util.concurrent.Callable;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import wainscribe.cli.json.CuttingJson;
import wainscribe.cli.text.CuttingText;
import wainscribe.cutting.CuttingJob;
import wainscribe.cutting.CuttingPlan;
import wainscribe.cutting.CuttingPlanner;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.takeoff.cutting.CuttingFileException;
import wainscribe.takeoff.cutting.CuttingInput;

/** Plans which piece is cut from which length. */
@Command(name = "cut", mixinStandardHelpOptions = true, description = {
		"Which piece from which length: the plan that costs least, among those the one that leaves the longest piece over.",
		"Bare lengths in files are in the unit of their line \"# units: in\" or \"# units: mm\", else of --units.",
		"Exit code 1: there is not enough stock; the best plan for the rest is given, with what is missing." })
final class CutCommand implements Callable<Integer> {

	@ArgGroup(multiplicity = "1")
	private Source source;

	@Mixin
	private CutOptions options;

	@Mixin
	private OutputOptions output;

	private final Console console;

	CutCommand(Console console) {
		this.console = console;
	}

	/** Where the pieces come from. */
	static final class Source {

		@ArgGroup(exclusive = false)
		private FileOptions files;
	}

	@Override
	public Integer call() throws BadInputException {
		BigDecimal seconds = options.seconds();
		try (Interruption interruption = Interruption.listen()) {
			int code = planFiles(seconds, interruption);
			interruption.endWith(code);
			return code;
		}
	}

	private int planFiles(BigDecimal seconds, Interruption interruption) throws BadInputException {
		CuttingInput input = source.files.read(output.unitsOr(null));
		LengthUnit units = output.unitsOr(input.units());
		CuttingJob job = job(input, options.kerf(Length.ZERO, units), options.trim(Length.ZERO, units));
		PlanProgress progress = new PlanProgress(console, seconds, interruption::isWished, System::nanoTime);
		CuttingPlan plan = new CuttingPlanner().plan(job, progress);
		if (output.isJson()) {
			console.json(CuttingJson.of(plan));
		} else {
			console.text(CuttingText.of(plan, units == null ? LengthUnit.MILLIMETRE : units));
		}
		return plan.unplaced().isEmpty() ? ExitCode.DONE : ExitCode.REFUSED;
	}

	private static CuttingJob job(CuttingInput input, Length kerf, Length trim) throws BadInputException {
		try {
			return input.job(kerf, trim);
		} catch (CuttingFileException e) {
			throw new BadInputException(e.getMessage());
		}
	}
}
