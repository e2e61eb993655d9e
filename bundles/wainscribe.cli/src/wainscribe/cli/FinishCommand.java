// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import wainscribe.cli.json.ColourJson;
import wainscribe.cli.json.FinishJson;
import wainscribe.cli.text.ColourText;
import wainscribe.cli.text.FinishText;
import wainscribe.finishes.coating.CoatingCatalogue;
import wainscribe.finishes.colour.ColourReading;
import wainscribe.finishes.colour.ColourSyntax;
import wainscribe.finishes.colour.Illuminant;
import wainscribe.finishes.colour.Illuminants;
import wainscribe.finishes.colour.SurfaceColour;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.storage.HomeFolder;
import wainscribe.report.DesignServices;
import wainscribe.report.finish.FinishSchedules;
import wainscribe.report.finish.RoomFinish;
import wainscribe.takeoff.Takeoffs;

/** Draws up the finish schedule of a home, or tells the numbers of colours. */
@Command(name = "finish", mixinStandardHelpOptions = true, description = {
		"Finish schedule of a home: coats, preparation and what speaks against them;", "or the numbers of a colour, alone, against another and by a light." })
final class FinishCommand implements Callable<Integer> {

	@ArgGroup(exclusive = true, multiplicity = "1")
	private Subject subject;

	@Mixin
	private OutputOptions output;

	private final DesignServices services;
	private final Console console;

	FinishCommand(DesignServices services, Console console) {
		this.services = services;
		this.console = console;
	}

	/** What the command is asked about. */
	private static final class Subject {

		@ArgGroup(exclusive = false)
		private HomeOptions home;

		@ArgGroup(exclusive = false)
		private Colours colours;
	}

	/** The options about colours. */
	private static final class Colours {

		@Option(names = "--colour", required = true, paramLabel = "C", description = "A colour as #rrggbb or lab:L,a,b (D65, 2 degrees).")
		private String colour;

		@Option(names = "--against", paramLabel = "C", description = "Another colour to compare it with.")
		private String against;

		@Option(names = "--light", paramLabel = "ID", defaultValue = "D65", description = {
				"The light it is seen by: A, D50, D65, FL2, FL11, LED-B3 or a colour temperature such as 2700K (default: ${DEFAULT-VALUE})." })
		private String light;
	}

	@Override
	public Integer call() throws BadInputException, IOException {
		if (subject.colours != null) {
			tell(reading(subject.colours));
		} else {
			HomeFolder folder = subject.home.open();
			tell(schedule(subject.home, folder), output.unitsOr(folder.home().getUnits()));
		}
		return ExitCode.DONE;
	}

	private List<RoomFinish> schedule(HomeOptions options, HomeFolder folder) throws BadInputException {
		DesignServices withOwn = options.with(services);
		FinishSchedules schedules = new FinishSchedules(new Takeoffs(withOwn.profiles()), CoatingCatalogue.builtIn());
		return options.rooms(folder).stream().map(room -> {
			console.progress("finishing " + room.getName()); //$NON-NLS-1$
			return schedules.of(withOwn.designer().design(folder.home(), room));
		}).toList();
	}

	private static ColourReading reading(Colours colours) throws BadInputException {
		SurfaceColour colour = colour("--colour", colours.colour); //$NON-NLS-1$
		Optional<SurfaceColour> against = colours.against == null ? Optional.empty() : Optional.of(colour("--against", colours.against)); //$NON-NLS-1$
		Illuminant light = Illuminants.byId(colours.light).orElseThrow(() -> BadInputException.option("--light", colours.light, "one of " //$NON-NLS-1$ //$NON-NLS-2$
				+ Illuminants.all().stream().map(Illuminant::id).collect(Collectors.joining(", ")) + " or 1000K to 25000K")); //$NON-NLS-1$ //$NON-NLS-2$
		return ColourReading.of(colour, against, light);
	}

	private static SurfaceColour colour(String option, String text) throws BadInputException {
		return ColourSyntax.parse(text).orElseThrow(() -> BadInputException.option(option, text,
				"#rrggbb, or lab:L,a,b with L from 0 to 100, a and b from -200 to 200")); //$NON-NLS-1$
	}

	private void tell(ColourReading reading) {
		if (output.isJson()) {
			console.json(ColourJson.of(reading));
		} else {
			console.text(ColourText.of(reading));
		}
	}

	private void tell(List<RoomFinish> rooms, LengthUnit unit) {
		if (output.isJson()) {
			console.json(FinishJson.of(rooms));
		} else {
			console.text(FinishText.of(rooms, unit));
		}
	}
}
