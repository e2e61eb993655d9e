// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.draft;

import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Diagonal;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.survey.SurveyColumn;
import wainscribe.survey.SurveyRow;
import wainscribe.survey.closure.ClosureCheck;
import wainscribe.survey.closure.Doubt;
import wainscribe.survey.closure.RoomClosure;

/** Rooms without a height, walls that can hardly be, and walls that do not close. */
final class RoomCheck {

	private static final Length LONG_WALL = Length.ofMillimetres(30_000);
	private static final Length SHORT_WALL = Length.ofMillimetres(25);
	private static final Length HIGH_CEILING = Length.ofMillimetres(12_000);

	private final SurveyDraft draft;
	private final WallCheck walls;

	RoomCheck(SurveyDraft draft) {
		this.draft = draft;
		this.walls = new WallCheck(draft);
	}

	/** Checks a room with all that is in it. */
	void check(Room room) {
		SurveyRow row = draft.rowOf(room);
		if (room.getWalls().isEmpty()) {
			draft.doubt(row, SurveyColumn.ROOM, Messages.RoomCheck_NoWalls);
		}
		for (Wall wall : room.getWalls()) {
			checkWall(room, wall);
			walls.check(wall);
		}
		boolean isMeasured = room.getWalls().stream().allMatch(wall -> draft.isClean(wall) && wall.getLength() != null
				&& (wall.getCorner() == null || draft.isClean(wall.getCorner())));
		if (isMeasured) {
			checkClosure(room);
		}
	}

	private void checkWall(Room room, Wall wall) {
		SurveyRow row = draft.rowOf(wall);
		if (draft.isClean(wall) && draft.isClean(room) && wall.getHeight() == null && room.getHeight() == null) {
			draft.refuse(row, SurveyColumn.HEIGHT, Messages.RoomCheck_NoHeight);
		}
		if (wall.getLength() != null && wall.getLength().isMoreThan(LONG_WALL)) {
			draft.doubt(row, SurveyColumn.WIDTH, NLS.bind(Messages.RoomCheck_LongWall, draft.shown(wall.getLength())));
		}
		if (wall.getLength() != null && wall.getLength().isLessThan(SHORT_WALL)) {
			draft.doubt(row, SurveyColumn.WIDTH, NLS.bind(Messages.RoomCheck_ShortWall, draft.shown(wall.getLength())));
		}
		Length height = wall.getHeight() == null ? room.getHeight() : wall.getHeight();
		if (height != null && height.isMoreThan(HIGH_CEILING)) {
			draft.doubt(wall.getHeight() == null ? draft.rowOf(room) : row, SurveyColumn.HEIGHT,
					NLS.bind(Messages.RoomCheck_HighCeiling, draft.shown(height)));
		}
	}

	private void checkClosure(Room room) {
		LengthUnit units = draft.units() == null ? LengthUnit.MILLIMETRE : draft.units();
		RoomClosure closure = new ClosureCheck(units).check(room);
		boolean isRefused = closure.verdict() == RoomClosure.Verdict.REFUSED;
		for (Doubt doubt : closure.doubtful()) {
			report(room, doubt, isRefused && doubt == closure.doubtful().getFirst());
		}
	}

	private void report(Room room, Doubt doubt, boolean isRefused) {
		Wall wall = room.getWalls().stream().filter(each -> doubt.wall().equals(each.getName())).findFirst().orElseThrow();
		SurveyRow row = draft.rowOf(wall);
		SurveyColumn column = doubt.isAboutAngle() ? SurveyColumn.ANGLE : SurveyColumn.WIDTH;
		if (isRefused) {
			draft.refuse(row, column, doubt.message());
			return;
		}
		Optional<Diagonal> diagonal = room.getDiagonals().stream()
				.filter(each -> each.getFrom() == wall && doubt.element().equals(each.getName())).findFirst();
		draft.doubt(diagonal.map(draft::rowOf).orElse(row), column, doubt.message());
	}
}
