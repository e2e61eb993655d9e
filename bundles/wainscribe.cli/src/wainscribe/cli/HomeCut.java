// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.io.IOException;
import java.util.List;
import java.util.Objects;

import wainscribe.cli.json.HomeCuttingJson;
import wainscribe.cli.text.HomeCuttingText;
import wainscribe.fabrication.CutList;
import wainscribe.fabrication.CutLists;
import wainscribe.layout.RoomDesign;
import wainscribe.model.Home;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.storage.HomeFolder;
import wainscribe.profile.TrimProfile;
import wainscribe.report.DesignServices;
import wainscribe.takeoff.cutting.CuttingDecisions;
import wainscribe.takeoff.cutting.HomeCuttingJob;
import wainscribe.takeoff.cutting.HomePlan;
import wainscribe.takeoff.cutting.HomePlanner;
import wainscribe.takeoff.cutting.PlanAcceptance;

/** Plans the cuts of a home's rooms and perhaps accepts the plan. */
record HomeCut(DesignServices services, Console console, CutOptions options, OutputOptions output) {

	HomeCut {
		Objects.requireNonNull(services);
		Objects.requireNonNull(console);
		Objects.requireNonNull(options);
		Objects.requireNonNull(output);
	}

	/**
	 * Plans.
	 *
	 * @param home     the home and its rooms
	 * @param accept   whether the plan is kept in the home
	 * @param progress ends the planning and hears how it gets on
	 * @return the exit code
	 */
	int run(HomeOptions home, boolean accept, PlanProgress progress) throws BadInputException, IOException {
		HomeFolder folder = home.open();
		DesignServices withOwn = home.with(services);
		LengthUnit units = output.unitsOr(folder.home().getUnits());
		List<RoomDesign> designs = home.rooms(folder).stream().map(room -> {
			console.progress("measuring " + room.getName()); //$NON-NLS-1$
			return withOwn.designer().design(folder.home(), room);
		}).toList();
		CutLists cutLists = withOwn.cutLists();
		List<CutList> lists = designs.stream().map(cutLists::of).toList();
		HomeCuttingJob job = HomeCuttingJob.of(folder.home(), designs, lists, decisions(folder.home(), units));
		HomePlan plan = new HomePlanner().plan(job, progress::stopped,
				better -> progress.tell(better.cost(), better.lowerBound(), better.bars().size()));
		boolean complete = plan.unplaced().isEmpty();
		if (accept && complete) {
			PlanAcceptance.of(folder.home(), plan).orElseThrow().applyTo(folder.home());
			folder.saveHome();
		}
		if (output.isJson()) {
			console.json(HomeCuttingJson.of(folder.home(), lists, plan));
		} else {
			console.text(HomeCuttingText.of(plan, units, id -> withOwn.profiles().find(id).map(TrimProfile::name).orElse(id)));
		}
		return complete ? ExitCode.DONE : ExitCode.REFUSED;
	}

	private CuttingDecisions decisions(Home home, LengthUnit units) throws BadInputException {
		CuttingDecisions decided = CuttingDecisions.of(home);
		return new CuttingDecisions(options.kerf(decided.kerf(), units), options.trim(decided.endTrim(), units),
				decided.shortestOffcut());
	}
}
