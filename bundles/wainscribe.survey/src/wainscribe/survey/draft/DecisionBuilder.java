// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.draft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Brief;
import wainscribe.model.Finish;
import wainscribe.model.Paint;
import wainscribe.model.Room;
import wainscribe.model.Surface;
import wainscribe.model.SurfaceZone;
import wainscribe.model.WainscribeFactory;
import wainscribe.survey.SurveyColumn;
import wainscribe.survey.SurveyProblem.Severity;
import wainscribe.survey.SurveyRow;
import wainscribe.survey.form.NoteText;
import wainscribe.survey.form.RowForm;
import wainscribe.survey.form.RowKind;

/** Takes in what was decided, and the coatings that are there. */
final class DecisionBuilder {

	private final SurveyDraft draft;
	private final RowFiller filler;
	private final Map<Brief, Map<String, SurveyRow>> decided = new HashMap<>();

	DecisionBuilder(SurveyDraft draft, RowFiller filler) {
		this.draft = draft;
		this.filler = filler;
	}

	/** Takes a row in; {@code room} is null for the whole home. */
	void take(RowKind kind, SurveyRow row, RowForm form, Room room) {
		switch (kind) {
			case BRIEF -> takeBrief(row, form, room);
			case PAINT -> takePaint(row, form, room);
			default -> takeFinish(row, form, room);
		}
	}

	/** Several rows may decide for one room, each something else. */
	private void takeBrief(SurveyRow row, RowForm form, Room room) {
		Brief brief = room == null ? draft.home().getBrief() : room.getBrief();
		if (brief == null) {
			brief = WainscribeFactory.eINSTANCE.createBrief();
			DraftBuilder.name(brief, row.cell(SurveyColumn.NAME));
			if (room == null) {
				draft.home().setBrief(brief);
			} else {
				room.setBrief(brief);
			}
		}
		Set<String> keys = filler.fill(brief, row, form, room);
		Map<String, SurveyRow> before = decided.computeIfAbsent(brief, each -> new HashMap<>());
		for (String key : keys) {
			SurveyRow first = before.putIfAbsent(key, row);
			if (first != null && form.notes().containsKey(key)) {
				draft.refuse(row, SurveyColumn.NOTE, NLS.bind(Messages.DecisionBuilder_DecidedTwice, key, first.row()));
			}
		}
	}

	private void takePaint(SurveyRow row, RowForm form, Room room) {
		Paint paint = WainscribeFactory.eINSTANCE.createPaint();
		List<Paint> others = room == null ? draft.home().getPaints() : room.getPaints();
		DraftBuilder.name(paint, row.cell(SurveyColumn.NAME));
		filler.fill(paint, row, form, room);
		paint.setZone(completed(paint.getZone(), row, room));
		for (Paint other : others) {
			refuseTwice(row, paint.getName(), paint.getZone(), other.getName(), other.getZone(), draft.rowOf(other));
		}
		others.add(paint);
	}

	/** Without a room it is on that surface in every room. */
	private void takeFinish(SurveyRow row, RowForm form, Room room) {
		if (room != null) {
			takeFinishOf(row, form, room);
		} else if (draft.rooms().isEmpty()) {
			draft.refuse(row, SurveyColumn.ROOM, Messages.DecisionBuilder_NoRooms);
		} else {
			draft.rooms().values().forEach(each -> takeFinishOf(row, form, each));
		}
	}

	private void takeFinishOf(SurveyRow row, RowForm form, Room room) {
		Finish finish = WainscribeFactory.eINSTANCE.createFinish();
		DraftBuilder.name(finish, row.cell(SurveyColumn.NAME));
		filler.fill(finish, row, form, room);
		finish.setZone(completed(finish.getZone(), row, room));
		for (Finish other : room.getFinishes()) {
			refuseTwice(row, finish.getName(), finish.getZone(), other.getName(), other.getZone(), draft.rowOf(other));
		}
		room.getFinishes().add(finish);
	}

	private void refuseTwice(SurveyRow row, String name, SurfaceZone zone, String otherName, SurfaceZone otherZone, SurveyRow otherRow) {
		boolean isSame = name != null && name.equals(otherName) && zone.getSurface() == otherZone.getSurface()
				&& zone.getWalls().equals(otherZone.getWalls());
		if (isSame) {
			draft.refuse(row, SurveyColumn.NAME, NLS.bind(Messages.DecisionBuilder_NameTwice, otherRow.row()));
		}
	}

	private SurfaceZone completed(SurfaceZone given, SurveyRow row, Room room) {
		SurfaceZone zone = given;
		if (zone == null) {
			zone = WainscribeFactory.eINSTANCE.createSurfaceZone();
			zone.setSurface(Surface.WALLS);
			draft.add(row, SurveyColumn.NOTE, Severity.NOTICE, Messages.DecisionBuilder_NoSurface);
		}
		for (String wall : wallsOf(row, room)) {
			zone.getWalls().add(wall);
		}
		return zone;
	}

	/** The wall cell holds one wall or several with | between them; a wall whose own name holds | comes first. */
	private List<String> wallsOf(SurveyRow row, Room room) {
		String cell = row.cell(SurveyColumn.WALL);
		List<String> names = new ArrayList<>();
		if (cell.isEmpty()) {
			return names;
		}
		boolean isOne = room == null || room.getWalls().stream().anyMatch(wall -> cell.equals(wall.getName()));
		for (String name : isOne ? List.of(cell) : NoteText.split(cell, NoteText.LIST_SEPARATOR)) {
			String wall = NoteText.plain(name.strip());
			names.add(wall);
			if (room != null && room.getWalls().stream().noneMatch(each -> wall.equals(each.getName()))) {
				draft.refuse(row, SurveyColumn.WALL,
						NLS.bind(Messages.DecisionBuilder_UnknownWall, DraftBuilder.list(room.getWalls().stream().map(each -> each.getName()).toList())));
				break;
			}
		}
		return names;
	}
}
