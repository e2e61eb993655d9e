// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;

import wainscribe.model.Box;
import wainscribe.model.Home;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Room;
import wainscribe.model.Service;
import wainscribe.model.Wall;
import wainscribe.survey.form.RowKind;
import wainscribe.survey.form.RowText;

/** Writes a home as a survey file that {@link SurveyReader} reads back with every measurement and decision. */
public final class SurveyWriter {

	/**
	 * Writes the rooms of a home.
	 *
	 * @param home  its unit is that of the bare numbers
	 * @param rooms in the order in which they are to stand in the file
	 * @return the text of the file, lines ending in a line feed
	 */
	public String write(Home home, List<Room> rooms) {
		StringWriter text = new StringWriter();
		text.write("# units: " + home.getUnits().symbol() + "\n" + SurveyColumn.header() + "\n"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
			RowText rowText = new RowText(home);
			writeHome(csv, rowText, home);
			for (Room room : rooms) {
				writeRoom(csv, rowText, room);
			}
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
		return text.toString();
	}

	private static void writeHome(CsvWriter csv, RowText text, Home home) {
		csv.writeRecord(text.of(RowKind.HOME, home, null, null));
		if (home.getBrief() != null) {
			csv.writeRecord(text.of(RowKind.BRIEF, home.getBrief(), null, null));
		}
		home.getPaints().forEach(paint -> csv.writeRecord(text.of(RowKind.PAINT, paint, null, null)));
	}

	private static void writeRoom(CsvWriter csv, RowText text, Room room) {
		csv.writeRecord(text.of(RowKind.ROOM, room, room, null));
		for (Wall wall : room.getWalls()) {
			csv.writeRecord(text.of(RowKind.WALL, wall, room, wall));
		}
		room.getDiagonals().forEach(each -> csv.writeRecord(text.of(RowKind.DIAGONAL, each, room, null)));
		for (Wall wall : room.getWalls()) {
			writeWall(csv, text, room, wall);
		}
		room.getFinishes().forEach(each -> csv.writeRecord(text.of(RowKind.FINISH, each, room, null)));
		if (room.getBrief() != null) {
			csv.writeRecord(text.of(RowKind.BRIEF, room.getBrief(), room, null));
		}
		room.getPaints().forEach(each -> csv.writeRecord(text.of(RowKind.PAINT, each, room, null)));
	}

	private static void writeWall(CsvWriter csv, RowText text, Room room, Wall wall) {
		if (wall.getCorner() != null) {
			csv.writeRecord(text.of(RowKind.CORNER, wall.getCorner(), room, wall));
		}
		for (Opening opening : wall.getOpenings()) {
			RowKind kind = opening.getKind() == OpeningKind.DOOR ? RowKind.DOOR : RowKind.WINDOW;
			csv.writeRecord(text.of(kind, opening, room, wall));
		}
		for (Box box : wall.getBoxes()) {
			csv.writeRecord(text.of(RowKind.BOX, box, room, wall));
		}
		wall.getFixtures().forEach(each -> csv.writeRecord(text.of(RowKind.FIXTURE, each, room, wall)));
		wall.getTrims().forEach(each -> csv.writeRecord(text.of(RowKind.TRIM, each, room, wall)));
		for (Service service : wall.getServices()) {
			RowKind kind = RowKind.ofWord(service.getKind().getLiteral()).orElseThrow();
			csv.writeRecord(text.of(kind, service, room, wall));
		}
		wall.getPlacedFrames().forEach(each -> csv.writeRecord(text.of(RowKind.FRAME, each, room, wall)));
	}
}
