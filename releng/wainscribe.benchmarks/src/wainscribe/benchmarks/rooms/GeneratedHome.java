// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks.rooms;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import wainscribe.layout.pattern.BuiltInPatterns;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.length.LengthUnit;
import wainscribe.survey.Survey;
import wainscribe.survey.SurveyException;
import wainscribe.survey.SurveyReader;

/**
 * A home of generated rooms.
 *
 * @param survey its tape-measure CSV, as the headless application reads it
 * @param home   the home
 * @param rooms  its rooms
 */
public record GeneratedHome(String survey, Home home, List<Room> rooms) {

	/** Copies the list. */
	public GeneratedHome {
		rooms = List.copyOf(rooms);
	}

	/**
	 * Makes up a home.
	 *
	 * @param unit    of its tape
	 * @param density how much stands on the walls
	 * @param seeds   one for each room
	 */
	public static GeneratedHome of(LengthUnit unit, RoomGenerator.Density density, List<Long> seeds) {
		List<String> rows = new ArrayList<>();
		rows.add("# units: " + (unit == LengthUnit.INCH ? "in" : "mm"));
		rows.add("kind,room,wall,name,x,y,width,height,depth,angle,note");
		rows.add("home,,,Generated home,,,,,,,");
		for (int i = 0; i < seeds.size(); i++) {
			String name = String.format(Locale.ROOT, "Room %03d", i + 1);
			rows.addAll(new RoomGenerator(seeds.get(i), unit, name).rows(density));
		}
		return read(String.join("\n", rows) + '\n');
	}

	/** Makes up a home of one room; every second seed is measured in inches. */
	public static GeneratedHome ofOne(long seed, RoomGenerator.Density density) {
		return of(seed % 2 == 0 ? LengthUnit.MILLIMETRE : LengthUnit.INCH, density, List.of(seed));
	}

	/** Reads a survey; a generated one is never refused. */
	public static GeneratedHome read(String survey) {
		try {
			SurveyReader reader = new SurveyReader(Set.copyOf(BuiltInPatterns.catalogue().ids()));
			Survey read = reader.read("generated.csv", new ByteArrayInputStream(survey.getBytes(StandardCharsets.UTF_8))).orRefuse();
			read.home().setUnits(read.units());
			return new GeneratedHome(survey, read.home(), read.rooms());
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		} catch (SurveyException e) {
			throw new IllegalStateException(e);
		}
	}
}
