// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wainscribe.cli.json.SurveyJson;
import wainscribe.cli.text.SurveyText;
import wainscribe.layout.pattern.PatternCatalogue;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.storage.HomeFileException;
import wainscribe.model.storage.HomeFolder;
import wainscribe.survey.Survey;
import wainscribe.survey.SurveyException;
import wainscribe.survey.SurveyImport;
import wainscribe.survey.SurveyReader;
import wainscribe.survey.SurveyReport;

/** Creates or updates the rooms of a home from a tape-measure CSV. */
@Command(name = "survey", mixinStandardHelpOptions = true, description = {
		"Creates or updates the rooms of a home from a tape-measure CSV and reports closure and doubtful measurements.",
		"In JSON, closure and perimeter are millimetres and area is square metres." })
final class SurveyCommand implements Callable<Integer> {

	@Parameters(paramLabel = "FILE.csv", description = "The survey.")
	private Path file;

	@Option(names = "--home", required = true, paramLabel = "DIR", description = "Folder of the home; made if it is not there.")
	private Path directory;

	@Mixin
	private OutputOptions output;

	private final PatternCatalogue patterns;
	private final Console console;

	SurveyCommand(PatternCatalogue patterns, Console console) {
		this.patterns = patterns;
		this.console = console;
	}

	@Override
	public Integer call() throws BadInputException, IOException {
		Survey survey = read();
		SurveyReport report = SurveyReport.of(survey);
		HomeFolder folder = openOrCreate();
		List<Room> before = folder.rooms();
		SurveyImport.Result result = new SurveyImport().into(survey, folder.home(), before);
		result.rooms().stream().filter(room -> !before.contains(room)).forEach(folder::add);
		folder.save();
		if (output.isJson()) {
			console.json(SurveyJson.of(report));
		} else {
			console.text(SurveyText.of(survey, report, result, output.unitsOr(folder.home().getUnits())));
		}
		return ExitCode.DONE;
	}

	private Survey read() throws BadInputException, IOException {
		try {
			return new SurveyReader(Set.copyOf(patterns.ids())).read(file).orRefuse();
		} catch (SurveyException e) {
			throw new BadInputException(e.getMessage());
		} catch (IOException e) {
			throw new BadInputException(file + ": can't be read (" + e.getMessage() + "); expected a CSV file"); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	private HomeFolder openOrCreate() throws BadInputException, IOException {
		if (Files.exists(directory) && !Files.isDirectory(directory)) {
			throw BadInputException.option("--home", directory.toString(), "a folder, not a file"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		if (!Files.exists(directory.resolve(HomeFolder.HOME_FILE))) {
			Home home = WainscribeFactory.eINSTANCE.createHome();
			home.setId("home"); //$NON-NLS-1$
			return HomeFolder.create(directory, home);
		}
		try {
			return HomeFolder.open(directory);
		} catch (HomeFileException e) {
			throw new BadInputException(e.getMessage());
		}
	}
}
