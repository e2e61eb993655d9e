// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.draft;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Corner;
import wainscribe.model.Diagonal;
import wainscribe.model.Element;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.WainscribeFactory;
import wainscribe.survey.SurveyColumn;
import wainscribe.survey.SurveyRow;
import wainscribe.survey.form.RowForm;
import wainscribe.survey.form.RowForms;
import wainscribe.survey.form.RowKind;

/** Builds the rooms of a survey from its rows, kind after kind, so that rows may stand in any order. */
final class DraftBuilder {

	private static final int LONGEST_NAME = 200;
	private static final int MOST_WALLS = 500;

	private final SurveyDraft draft;
	private final RowFiller filler;
	private final WallContents contents;
	private final DecisionBuilder decisions;
	private SurveyRow homeRow;

	DraftBuilder(SurveyDraft draft) {
		this.draft = draft;
		this.filler = new RowFiller(draft);
		this.contents = new WallContents(draft, filler);
		this.decisions = new DecisionBuilder(draft, filler);
	}

	/** Takes all rows in. */
	void take(List<SurveyRow> rows) {
		Map<RowKind, List<SurveyRow>> byKind = new EnumMap<>(RowKind.class);
		for (SurveyRow row : rows) {
			Optional<RowKind> kind = RowKind.ofWord(row.cell(SurveyColumn.KIND));
			if (kind.isPresent()) {
				byKind.computeIfAbsent(kind.get(), each -> new ArrayList<>()).add(row);
			} else {
				draft.refuse(row, SurveyColumn.KIND, NLS.bind(Messages.DraftBuilder_UnknownKind, RowKind.words()));
			}
		}
		byKind.forEach((kind, found) -> found.forEach(row -> take(kind, row)));
	}

	private void take(RowKind kind, SurveyRow row) {
		RowForm form = RowForms.of(kind);
		if (!namesFit(row, form)) {
			return;
		}
		Room room = draft.rooms().get(row.cell(SurveyColumn.ROOM));
		boolean isInRoom = kind != RowKind.HOME && kind != RowKind.ROOM && !row.cell(SurveyColumn.ROOM).isEmpty();
		if (isInRoom && room == null) {
			draft.refuse(row, SurveyColumn.ROOM,
					NLS.bind(Messages.DraftBuilder_UnknownRoom, list(draft.rooms().keySet())));
			return;
		}
		switch (kind) {
			case HOME -> takeHome(row, form);
			case ROOM -> takeRoom(row, form);
			case WALL -> takeWall(row, form, room);
			case DIAGONAL -> takeDiagonal(row, form, room);
			case CORNER -> contents.wallOf(row, room).ifPresent(wall -> takeCorner(row, form, wall));
			case FINISH, BRIEF, PAINT -> decisions.take(kind, row, form, room);
			default -> contents.wallOf(row, room).ifPresent(wall -> contents.take(kind, row, form, wall));
		}
	}

	/** Returns what there is instead of a name that is not known. */
	static String list(Collection<String> names) {
		return names.isEmpty() ? Messages.DraftBuilder_None : ": " + String.join(", ", names.stream().limit(12).toList()); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private boolean namesFit(SurveyRow row, RowForm form) {
		boolean fit = true;
		for (SurveyColumn column : List.of(SurveyColumn.ROOM, SurveyColumn.WALL, SurveyColumn.NAME)) {
			String name = row.cell(column);
			if (name.isEmpty() && form.needed().contains(column)) {
				draft.refuse(row, column, NLS.bind(Messages.DraftBuilder_NoName, column.title()));
				fit = false;
			} else if (name.length() > LONGEST_NAME) {
				draft.refuse(row, column, NLS.bind(Messages.DraftBuilder_LongName, LONGEST_NAME));
				fit = false;
			}
		}
		return fit;
	}

	private void takeHome(SurveyRow row, RowForm form) {
		if (homeRow != null) {
			draft.refuse(row, SurveyColumn.KIND, NLS.bind(Messages.DraftBuilder_HomeTwice, homeRow.row()));
			return;
		}
		homeRow = row;
		Home home = draft.home();
		name(home, row.cell(SurveyColumn.NAME));
		filler.fill(home, row, form, null);
	}

	private void takeRoom(SurveyRow row, RowForm form) {
		String name = row.cell(SurveyColumn.ROOM);
		Room first = draft.rooms().get(name);
		if (first != null) {
			draft.refuse(row, SurveyColumn.ROOM, NLS.bind(Messages.DraftBuilder_RoomTwice, draft.rowOf(first).row()));
			return;
		}
		Room room = WainscribeFactory.eINSTANCE.createRoom();
		room.setName(name);
		draft.rooms().put(name, room);
		filler.fill(room, row, form, room);
	}

	private void takeWall(SurveyRow row, RowForm form, Room room) {
		String name = row.cell(SurveyColumn.WALL);
		Optional<Wall> first = room.getWalls().stream().filter(wall -> name.equals(wall.getName())).findFirst();
		if (first.isPresent()) {
			draft.refuse(row, SurveyColumn.WALL, NLS.bind(Messages.DraftBuilder_WallTwice, draft.rowOf(first.get()).row()));
			return;
		}
		if (room.getWalls().size() == MOST_WALLS) {
			draft.refuse(row, SurveyColumn.WALL, NLS.bind(Messages.DraftBuilder_TooManyWalls, MOST_WALLS));
			return;
		}
		Wall wall = WainscribeFactory.eINSTANCE.createWall();
		wall.setName(name);
		room.getWalls().add(wall);
		filler.fill(wall, row, form, room);
	}

	private void takeDiagonal(SurveyRow row, RowForm form, Room room) {
		Diagonal diagonal = WainscribeFactory.eINSTANCE.createDiagonal();
		name(diagonal, row.cell(SurveyColumn.NAME));
		filler.fill(diagonal, row, form, room);
		if (draft.isClean(diagonal) && (diagonal.getFrom() == null || diagonal.getTo() == null)) {
			draft.refuse(row, SurveyColumn.NOTE, Messages.DraftBuilder_DiagonalEnds);
		} else if (draft.isClean(diagonal) && diagonal.getFrom() == diagonal.getTo()) {
			draft.refuse(row, SurveyColumn.NOTE, Messages.DraftBuilder_DiagonalSameWall);
		} else {
			room.getDiagonals().add(diagonal);
		}
	}

	private void takeCorner(SurveyRow row, RowForm form, Wall wall) {
		if (wall.getCorner() != null) {
			draft.refuse(row, SurveyColumn.WALL, NLS.bind(Messages.DraftBuilder_CornerTwice, draft.rowOf(wall.getCorner()).row()));
			return;
		}
		Corner corner = WainscribeFactory.eINSTANCE.createCorner();
		name(corner, row.cell(SurveyColumn.NAME));
		filler.fill(corner, row, form, wall.getRoom());
		wall.setCorner(corner);
		if (draft.isClean(corner)) {
			TriangleCheck.check(draft, corner, row);
		}
	}

	static void name(Element element, String name) {
		element.setName(name.isEmpty() ? null : name);
	}

}
