// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

import wainscribe.drawing.Palette;
import wainscribe.drawing.elevation.ElevationDrawing;
import wainscribe.drawing.elevation.ElevationOptions;
import wainscribe.drawing.svg.SvgLook;
import wainscribe.layout.pattern.PatternCatalogue;
import wainscribe.layout.pattern.PatternDescriptor;
import wainscribe.model.Home;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.profile.TrimProfile;
import wainscribe.report.PackContent;
import wainscribe.report.RoomContent;
import wainscribe.report.files.ElevationPlan;
import wainscribe.takeoff.RoomTakeoff;

/** Turns the content of a pack into what its pages show. Immutable. */
public final class PackViews {

	private final UnaryOperator<String> profileName;
	private final UnaryOperator<String> patternName;
	private final ElevationViews elevations;

	/**
	 * Creates the service.
	 *
	 * @param profiles   names of profiles
	 * @param patterns   names of patterns
	 * @param elevation  draws
	 * @param extensions of the files that the pack holds for each elevation
	 */
	public PackViews(ProfileCatalogue profiles, PatternCatalogue patterns, ElevationDrawing elevation,
			List<String> extensions) {
		profileName = id -> profiles.find(id).map(TrimProfile::name).orElse(id);
		patternName = id -> patterns.find(id).map(PatternDescriptor::name).orElse(id);
		elevations = new ElevationViews(elevation, extensions);
	}

	/** Returns what the pages show. */
	public PackView of(PackContent content) {
		Home home = content.home();
		LengthUnit unit = home.getUnits() == null ? LengthUnit.MILLIMETRE : home.getUnits();
		Wording wording = new Wording(unit);
		QuantityRows quantities = new QuantityRows(content.takeoff().currency(), unit);
		List<ElevationPlan> plans = ElevationPlan.of(content);
		List<RoomView> rooms = new ArrayList<>();
		for (RoomContent room : content.rooms()) {
			rooms.add(room(content, room, plans.stream().filter(plan -> plan.room() == room).toList(), wording, quantities,
					"room-" + (rooms.size() + 1)));
		}
		List<FindingView> findings = content.rooms().stream().flatMap(room -> room.findings().stream())
				.map(FindingView::of).toList();
		String title = Wording.text(home.getName()).isEmpty() ? "Home" : Wording.text(home.getName());
		return new PackView(title, unit == LengthUnit.INCH ? "feet and inches" : "millimetres",
				measured(content, wording), proposed(content), findings, Cautions.of(content), rooms,
				quantities.of(content.takeoff().lines()), quantities.totals(content.takeoff().totals()),
				new CuttingViews(profileName).of(home, content.cutting()), styles(home));
	}

	private static String styles(Home home) {
		double scale = ElevationOptions.of(home).scale();
		String light = SvgLook.styleSheet(".drawing", Palette.light().styles(), scale);
		String dark = SvgLook.styleSheet(".drawing", Palette.dark().styles(), scale);
		String paper = SvgLook.styleSheet(".drawing", Palette.paper().styles(), scale);
		return light + "@media screen and (prefers-color-scheme: dark){\n" + dark + "}\n@media print{\n" + paper + "}\n";
	}

	private RoomView room(PackContent content, RoomContent room, List<ElevationPlan> plans, Wording wording,
			QuantityRows quantities, String id) {
		RoomFacts facts = new RoomFacts(wording, profileName, patternName);
		PieceRows pieces = new PieceRows(wording, profileName);
		RoomColours colours = RoomColours.of(content.home(), room.design().room());
		List<RoomTakeoff> takeoff = content.takeoff().rooms().stream().filter(one -> one.room().equals(room.name())).toList();
		return new RoomView(id, room.name().isEmpty() ? "Room" : room.name(), facts.measured(room.design().room()),
				facts.proposed(room.design().layout()), facts.open(room.design().layout()),
				plans.stream().map(plan -> elevations.of(plan, colours, wording)).toList(), pieces.of(room.cutList()), room.cutList().pieces().size(),
				pieces.removals(room.cutList()), new StickViews(wording.unit()).spacers(room), pieces.blocks(room.cutList()),
				takeoff.stream().flatMap(one -> quantities.of(one.lines()).stream()).toList(),
				takeoff.stream().map(one -> quantities.total(one.totals())).findFirst().orElse(""), colours.views(),
				room.findings().stream().map(FindingView::of).toList());
	}

	private static List<Fact> measured(PackContent content, Wording wording) {
		Home home = content.home();
		List<Fact> facts = new ArrayList<>();
		facts.add(new Fact("Rooms", String.join(", ", content.rooms().stream().map(RoomContent::name).toList())));
		List<Wall> walls = content.rooms().stream().flatMap(room -> room.design().room().getWalls().stream()).toList();
		Length round = walls.stream().map(Wall::getLength).filter(length -> length != null).reduce(Length.ZERO, Length::plus);
		facts.add(new Fact("Walls", walls.size() + ", together " + wording.length(round)));
		facts.add(new Fact("Openings", String.valueOf(walls.stream().mapToInt(wall -> wall.getOpenings().size()).sum())));
		facts.add(new Fact("Fixtures", String.valueOf(walls.stream().mapToInt(wall -> wall.getFixtures().size()).sum())));
		facts.add(new Fact("Plates", String.valueOf(walls.stream().mapToInt(wall -> wall.getBoxes().size()).sum())));
		if (home.getBuilt() != null) {
			facts.add(new Fact("Built", String.valueOf(home.getBuilt())));
		}
		if (!Wording.text(home.getCountry()).isEmpty()) {
			facts.add(new Fact("Country", Wording.text(home.getCountry())));
		}
		return facts;
	}

	private static String counted(long number, String what) {
		return number == 0 ? "" : ": " + number + " " + what + (number == 1 ? "" : "s");
	}

	private List<Fact> proposed(PackContent content) {
		List<Fact> facts = new ArrayList<>();
		for (RoomContent room : content.rooms()) {
			long frames = room.design().layout().frames().count();
			long strips = room.design().layout().strips().count();
			String pattern = patternName.apply(room.design().layout().pattern());
			facts.add(new Fact(room.name().isEmpty() ? "Room" : room.name(),
					pattern + counted(frames, "frame") + counted(strips, "strip")));
		}
		return facts;
	}
}
