// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;

import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthParser;
import wainscribe.model.length.LengthUnit;

/** Surveys as texts. */
public final class Surveys {

	/** The header row. */
	public static final String HEADER = "kind,room,wall,name,x,y,width,height,depth,angle,note\n";
	/** A room of four walls; its last row is row 7. */
	public static final String HALL = """
			room,Hall,,,,,,96,,,use=hall
			wall,Hall,A,,,,120,,,,
			wall,Hall,B,,,,96,,,,
			wall,Hall,C,,,,120,,,,
			wall,Hall,D,,,,96,,,,
			""";

	private Surveys() {
	}

	/** Reads rows below the header, in inches. */
	public static Survey read(String rows) throws IOException {
		return readFile("# units: in\n" + HEADER + rows);
	}

	/** Returns a reader that knows some wall patterns. */
	public static SurveyReader reader() {
		return new SurveyReader(Set.of("frames-under-rail", "frames-two-tier", "frames-to-ceiling"));
	}

	/** Reads a whole file. */
	public static Survey readFile(String text) throws IOException {
		return reader().read("survey.csv", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
	}

	/** Returns a wall of the only room. */
	public static Wall wall(Survey survey, String name) {
		return wall(survey.rooms().getFirst(), name);
	}

	/** Returns a wall of a room. */
	public static Wall wall(Room room, String name) {
		return room.getWalls().stream().filter(wall -> name.equals(wall.getName())).findFirst().orElseThrow();
	}

	/** Returns a length in inches. */
	public static Length in(String text) {
		return new LengthParser(LengthUnit.INCH).parse(text);
	}

	/** Returns x, y, width and height in millimetres. */
	public static String outline(Placed placed) {
		return placed.getX().toMillimetres() + " " + placed.getY().toMillimetres() + " " + placed.getWidth().toMillimetres() + " "
				+ placed.getHeight().toMillimetres();
	}
}
