// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import wainscribe.cli.json.LayoutJson;
import wainscribe.cli.text.LayoutText;
import wainscribe.layout.EffectiveBrief;
import wainscribe.layout.MouldingSection;
import wainscribe.layout.PlainStretch;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.RoomLayout;
import wainscribe.model.Brief;
import wainscribe.model.ProfileReference;
import wainscribe.model.ProfileUse;
import wainscribe.model.Room;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthParser;
import wainscribe.model.length.LengthSyntaxException;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.storage.HomeFolder;
import wainscribe.profile.TrimProfile;
import wainscribe.report.DesignServices;

/** Solves the layout of rooms. */
@Command(name = "layout", mixinStandardHelpOptions = true, description = {
		"Lays out the wall frames or strips of a home's rooms.",
		"Exit code 1: a stretch that could take a frame stays plain, or the rail or the gap was refused; the best remaining layout is given." })
final class LayoutCommand implements Callable<Integer> {

	@Mixin
	private HomeOptions homeOptions;

	@Option(names = "--pattern", paramLabel = "ID", description = "Wall pattern instead of the brief's.")
	private String pattern;

	@Option(names = "--rail", paramLabel = "LEN", description = "Height of the top of the rail instead of the brief's.")
	private String rail;

	@Option(names = "--gap", paramLabel = "LEN", description = {
			"Gap between frames instead of the brief's; between strips, the clear width to aim at." })
	private String gap;

	@Option(names = "--profile", paramLabel = "ID", description = {
			"Profile of the frames or strips instead of the brief's: of the suite, of a plug-in, of a file in the home,",
			"or a shape in a size such as ogee-40x15." })
	private String profile;

	@Option(names = "--apply", description = {
			"Keep the options given as decisions in the rooms' briefs,", "but not in a room that refuses the rail or the gap." })
	private boolean apply;

	@Mixin
	private OutputOptions output;

	private DesignServices services;
	private final Console console;

	LayoutCommand(DesignServices services, Console console) {
		this.services = services;
		this.console = console;
	}

	@Override
	public Integer call() throws BadInputException, IOException {
		HomeFolder folder = homeOptions.open();
		services = homeOptions.with(services);
		List<Room> rooms = homeOptions.rooms(folder);
		LengthUnit units = output.unitsOr(folder.home().getUnits());
		Wishes wishes = wishes(units);
		List<RoomDesign> designs = new ArrayList<>();
		List<Room> willing = new ArrayList<>();
		for (Room room : rooms) {
			console.progress("laying out " + room.getName()); //$NON-NLS-1$
			RoomDesign design = services.designer().design(folder.home(), room,
					wishes.over(services.designer().brief(folder.home(), room)));
			designs.add(design);
			if (apply && isRefused(folder, design, wishes)) {
				console.progress("options not kept in " + room.getName() + ": the rail or the gap is refused"); //$NON-NLS-1$ //$NON-NLS-2$
			} else {
				willing.add(room);
			}
		}
		if (apply && !willing.isEmpty()) {
			willing.forEach(wishes::keepIn);
			folder.save();
		}
		report(designs.stream().map(RoomDesign::layout).toList(), units);
		return designs.stream().allMatch(design -> design.layout().infeasible().isEmpty()) ? ExitCode.DONE : ExitCode.REFUSED;
	}

	/** A rail or gap is refused if it makes something impossible that is possible without it. */
	private boolean isRefused(HomeFolder folder, RoomDesign wished, Wishes wishes) {
		if (wished.layout().infeasible().isEmpty() || wishes.rail() == null && wishes.gap() == null) {
			return false;
		}
		EffectiveBrief brief = wishes.withoutLengths().over(services.designer().brief(folder.home(), wished.room()));
		List<PlainStretch> before = services.designer().design(folder.home(), wished.room(), brief).layout().infeasible();
		return wished.layout().infeasible().stream().anyMatch(stretch -> before.stream().noneMatch(
				other -> other.wall() == stretch.wall() && other.reason().equals(stretch.reason())));
	}

	private void report(List<RoomLayout> layouts, LengthUnit units) {
		if (output.isJson()) {
			console.json(LayoutJson.of(layouts));
		} else {
			console.text(LayoutText.of(layouts, units));
		}
	}

	private Wishes wishes(LengthUnit units) throws BadInputException {
		if (pattern != null && !services.patterns().ids().contains(pattern)) {
			throw BadInputException.option("--pattern", pattern, "one of " + services.patterns().ids().stream().sorted().toList()); //$NON-NLS-1$ //$NON-NLS-2$
		}
		TrimProfile chosen = null;
		if (profile != null) {
			chosen = services.profiles().find(profile).orElse(null);
			if (chosen == null) {
				throw BadInputException.option("--profile", profile, "one of " //$NON-NLS-1$ //$NON-NLS-2$
						+ services.profiles().forUse(ProfileUse.FRAME).stream().map(TrimProfile::id).toList()
						+ " or a shape in a size such as ogee-40x15 (" + services.profiles().fault(profile).orElseThrow() + ')'); //$NON-NLS-1$
			}
		}
		return new Wishes(pattern, length("--rail", rail, units), length("--gap", gap, units), chosen); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static Length length(String option, String text, LengthUnit units) throws BadInputException {
		if (text == null) {
			return null;
		}
		try {
			Length length = new LengthParser(units).parse(text);
			if (length.signum() <= 0) {
				throw BadInputException.option(option, text, "a length above zero"); //$NON-NLS-1$
			}
			return length;
		} catch (LengthSyntaxException e) {
			throw new BadInputException("option " + option + ": " + e.getMessage()); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	/** What the options ask for; null where they ask for nothing. */
	private record Wishes(String pattern, Length rail, Length gap, TrimProfile profile) {

		EffectiveBrief over(EffectiveBrief brief) {
			EffectiveBrief wished = brief;
			wished = pattern == null ? wished : wished.withPattern(pattern);
			wished = rail == null ? wished : wished.withRailTop(rail);
			wished = gap == null ? wished : wished.withGap(gap);
			return profile == null ? wished
					: wished.withFrame(new MouldingSection(profile.id(), profile.face(), profile.thickness()));
		}

		Wishes withoutLengths() {
			return new Wishes(pattern, null, null, profile);
		}

		void keepIn(Room room) {
			if (pattern == null && rail == null && gap == null && profile == null) {
				return;
			}
			if (room.getBrief() == null) {
				Brief made = WainscribeFactory.eINSTANCE.createBrief();
				made.setId("brief"); //$NON-NLS-1$
				room.setBrief(made);
			}
			Brief brief = room.getBrief();
			brief.setPattern(pattern == null ? brief.getPattern() : pattern);
			brief.setRail(rail == null ? brief.getRail() : rail);
			brief.setGap(gap == null ? brief.getGap() : gap);
			if (profile != null) {
				keepProfileIn(brief);
			}
		}

		private void keepProfileIn(Brief brief) {
			brief.getProfiles().removeIf(reference -> reference.getUse() == ProfileUse.FRAME);
			ProfileReference reference = WainscribeFactory.eINSTANCE.createProfileReference();
			reference.setUse(ProfileUse.FRAME);
			reference.setProfile(profile.id());
			brief.getProfiles().add(reference);
			brief.setFace(null);
			brief.setThickness(null);
		}
	}
}
