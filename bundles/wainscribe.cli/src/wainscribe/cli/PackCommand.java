// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import com.google.gson.JsonObject;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import wainscribe.cli.json.PackJson;
import wainscribe.model.Room;
import wainscribe.model.storage.HomeFolder;
import wainscribe.report.ClientPack;
import wainscribe.report.DesignServices;
import wainscribe.report.PackContent;
import wainscribe.report.PackContents;
import wainscribe.report.PackProgress;

/** Writes the client pack. */
@Command(name = "pack", mixinStandardHelpOptions = true, description = {
		"Writes the client pack: page, document, elevations as SVG and DXF, piece list and quantities." })
final class PackCommand implements Callable<Integer> {

	@Mixin
	private HomeOptions homeOptions;

	@Option(names = "--out", required = true, paramLabel = "DIR", description = {
			"Folder of the pack. An earlier pack in it is replaced; other files in it are left alone." })
	private Path out;

	@Mixin
	private OutputOptions output;

	private final DesignServices services;
	private final Console console;

	PackCommand(DesignServices services, Console console) {
		this.services = services;
		this.console = console;
	}

	@Override
	public Integer call() throws BadInputException, IOException {
		HomeFolder folder = homeOptions.open();
		DesignServices withOwn = homeOptions.with(services);
		List<Room> rooms = homeOptions.rooms(folder);
		if (Files.exists(out) && !Files.isDirectory(out)) {
			throw BadInputException.option("--out", out.toString(), "a folder, not a file"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		folder.home().setUnits(output.unitsOr(folder.home().getUnits()));
		PackProgress progress = new StepsOnConsole(console);
		PackContent content = new PackContents(withOwn).of(folder.home(), rooms, progress);
		List<Path> files = write(withOwn, content, progress);
		if (output.isJson()) {
			JsonObject result = PackJson.of(out, files);
			console.json(result);
		} else {
			console.text("The pack is in " + out + '\n'); //$NON-NLS-1$
		}
		return ExitCode.DONE;
	}

	private List<Path> write(DesignServices withOwn, PackContent content, PackProgress progress) throws BadInputException, IOException {
		try {
			return new ClientPack(withOwn).write(content, out, progress);
		} catch (FileAlreadyExistsException e) {
			throw new BadInputException("option --out: \"" + out + "\": " + e.getFile() + ' ' + e.getReason()); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	/** Shows each step as a line on standard error. */
	private record StepsOnConsole(Console console) implements PackProgress {

		@Override
		public void step(String what, int done, int total) {
			console.progress((done + 1) + "/" + total + ' ' + what); //$NON-NLS-1$
		}

		@Override
		public boolean isCancelled() {
			return false;
		}
	}
}
