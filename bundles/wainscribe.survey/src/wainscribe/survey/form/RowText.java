// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

import wainscribe.model.Box;
import wainscribe.model.Element;
import wainscribe.model.Finish;
import wainscribe.model.Home;
import wainscribe.model.Paint;
import wainscribe.model.Room;
import wainscribe.model.SurfaceZone;
import wainscribe.model.Wall;
import wainscribe.survey.SurveyColumn;

/** The cells of a row, as the form of its kind says. */
public final class RowText {

	private final Home home;

	/**
	 * Creates a writer of rows.
	 *
	 * @param home gives the unit of bare numbers and the country of plates
	 */
	public RowText(Home home) {
		this.home = Objects.requireNonNull(home);
	}

	/**
	 * Returns the cells in the order of the header.
	 *
	 * @param room room of the row, null for a row of the whole home
	 * @param wall wall of the row, null for a row of a whole room
	 */
	public List<String> of(RowKind kind, Element element, Room room, Wall wall) {
		RowForm form = RowForms.of(kind);
		Map<SurveyColumn, String> cells = new EnumMap<>(SurveyColumn.class);
		cells.put(SurveyColumn.KIND, kind.word());
		cells.put(SurveyColumn.ROOM, room == null ? "" : room.getName()); //$NON-NLS-1$
		cells.put(SurveyColumn.WALL, wall == null ? zoneWalls(element) : wall.getName());
		boolean hasName = form.taken().contains(SurveyColumn.NAME) && element.getName() != null;
		cells.put(SurveyColumn.NAME, hasName ? element.getName() : ""); //$NON-NLS-1$
		for (CellField field : form.cells()) {
			field.write(element, home.getUnits()).filter(text -> !goesWithoutSaying(element, field.column()))
					.ifPresent(text -> cells.put(field.column(), text));
		}
		cells.put(SurveyColumn.NOTE, note(element, form));
		List<String> row = new ArrayList<>();
		for (SurveyColumn column : SurveyColumn.values()) {
			row.add(cells.getOrDefault(column, "")); //$NON-NLS-1$
		}
		return row;
	}

	private String note(Element element, RowForm form) {
		List<String> entries = new ArrayList<>();
		for (NoteField field : form.notes().values()) {
			field.write(element, home.getUnits()).ifPresent(text -> entries.add(field.key() + '=' + text));
		}
		entries.addAll(element.getNotes());
		return String.join(String.valueOf(NoteText.ENTRY_SEPARATOR), entries);
	}

	/** The size of a usual plate follows from its gangs. */
	private boolean goesWithoutSaying(Element element, SurveyColumn column) {
		boolean isSize = column == SurveyColumn.WIDTH || column == SurveyColumn.HEIGHT;
		if (!isSize || !(element instanceof Box box) || box.getGang() == null) {
			return false;
		}
		Optional<PlateSize> usual = PlateSize.usual(home.getCountry(), home.getUnits(), box.getGang());
		return usual.isPresent() && usual.get().equals(new PlateSize(box.getWidth(), box.getHeight()));
	}

	private static String zoneWalls(Element element) {
		SurfaceZone zone = switch (element) {
			case Finish finish -> finish.getZone();
			case Paint paint -> paint.getZone();
			default -> null;
		};
		if (zone == null || zone.getWalls().size() < 2) {
			return zone == null ? "" : String.join("", zone.getWalls()); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return zone.getWalls().stream().map(NoteText::escaped)
				.collect(Collectors.joining(String.valueOf(NoteText.LIST_SEPARATOR)));
	}
}
