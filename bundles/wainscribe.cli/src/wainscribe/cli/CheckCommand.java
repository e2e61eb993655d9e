// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import wainscribe.cli.json.FindingsJson;
import wainscribe.cli.text.FindingsText;
import wainscribe.model.Room;
import wainscribe.model.storage.HomeFolder;
import wainscribe.report.DesignServices;
import wainscribe.rules.Finding;
import wainscribe.rules.Severity;

/** Runs all rules on rooms. */
@Command(name = "check", mixinStandardHelpOptions = true, description = {
		"Checks the rooms of a home against the rules of the trade.", "Exit code 1: there are findings of error level." })
final class CheckCommand implements Callable<Integer> {

	@Mixin
	private HomeOptions homeOptions;

	@Mixin
	private OutputOptions output;

	private final DesignServices services;
	private final Console console;

	CheckCommand(DesignServices services, Console console) {
		this.services = services;
		this.console = console;
	}

	@Override
	public Integer call() throws BadInputException {
		HomeFolder folder = homeOptions.open();
		DesignServices withOwn = homeOptions.with(services);
		List<Finding> findings = new ArrayList<>();
		for (Room room : homeOptions.rooms(folder)) {
			console.progress("checking " + room.getName()); //$NON-NLS-1$
			findings.addAll(withOwn.rules().check(withOwn.designer().design(folder.home(), room)));
		}
		if (output.isJson()) {
			console.json(FindingsJson.of(findings));
		} else {
			console.text(FindingsText.of(findings));
		}
		return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR) ? ExitCode.REFUSED : ExitCode.DONE;
	}
}
