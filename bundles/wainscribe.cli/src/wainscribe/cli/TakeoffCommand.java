// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import wainscribe.cli.json.TakeoffJson;
import wainscribe.cli.text.TakeoffText;
import wainscribe.layout.RoomDesign;
import wainscribe.model.storage.HomeFolder;
import wainscribe.report.DesignServices;
import wainscribe.takeoff.HomeTakeoff;
import wainscribe.takeoff.PriceList;
import wainscribe.takeoff.PriceListException;
import wainscribe.takeoff.PriceListReader;
import wainscribe.takeoff.Takeoffs;
import wainscribe.takeoff.TakeoffWorkbook;

/** Finds what has to be bought, and what it costs. */
@Command(name = "takeoff", mixinStandardHelpOptions = true, description = "Quantities of everything to buy, and the budget.")
final class TakeoffCommand implements Callable<Integer> {

	@Mixin
	private HomeOptions homeOptions;

	@Option(names = "--prices", paramLabel = "FILE.csv", description = {
			"Price list (item,unit,pack,pack-length,price) that replaces the home's prices and is kept in the home." })
	private Path prices;

	@Option(names = "--xlsx", paramLabel = "FILE.xlsx", description = "Also writes the quantities as a workbook.")
	private Path workbook;

	@Mixin
	private OutputOptions output;

	private final DesignServices services;
	private final Console console;

	TakeoffCommand(DesignServices services, Console console) {
		this.services = services;
		this.console = console;
	}

	@Override
	public Integer call() throws BadInputException, IOException {
		if (workbook != null && !workbook.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) { //$NON-NLS-1$
			throw BadInputException.option("--xlsx", workbook.toString(), "a file that ends in .xlsx"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		HomeFolder folder = homeOptions.open();
		DesignServices withOwn = homeOptions.with(services);
		if (prices != null) {
			readPrices(folder).applyTo(folder.home());
		}
		List<RoomDesign> designs = homeOptions.rooms(folder).stream().map(room -> {
			console.progress("measuring " + room.getName()); //$NON-NLS-1$
			return withOwn.designer().design(folder.home(), room);
		}).toList();
		HomeTakeoff takeoff = new Takeoffs(withOwn.profiles()).of(folder.home(), designs);
		if (workbook != null) {
			ReplacedFile.write(workbook, (OutputStream out) -> new TakeoffWorkbook().write(takeoff, out));
		}
		if (prices != null) {
			folder.saveHome();
		}
		if (output.isJson()) {
			console.json(TakeoffJson.of(takeoff));
		} else {
			console.text(TakeoffText.of(takeoff, output.unitsOr(folder.home().getUnits())));
		}
		return ExitCode.DONE;
	}

	private PriceList readPrices(HomeFolder folder) throws BadInputException, IOException {
		try {
			return new PriceListReader(output.unitsOr(folder.home().getUnits())).read(prices);
		} catch (PriceListException e) {
			throw new BadInputException(e.getMessage());
		}
	}
}
