// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.draft;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.ExistingTrim;
import wainscribe.model.Opening;
import wainscribe.model.Placed;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;
import wainscribe.model.outline.Outlines;
import wainscribe.model.outline.WallShape;
import wainscribe.survey.SurveyColumn;
import wainscribe.survey.SurveyRow;

/** Things that are not on their wall, openings that overlap, and names used twice on a wall. */
final class WallCheck {

	private final SurveyDraft draft;

	WallCheck(SurveyDraft draft) {
		this.draft = draft;
	}

	/** Checks all that is on a wall. */
	void check(Wall wall) {
		List<Placed> all = PlacedOnWall.of(wall);
		checkNames(wall, all);
		if (draft.isClean(wall) && wall.getLength() != null) {
			for (Placed placed : all) {
				if (draft.isClean(placed) && placed.getX() != null) {
					checkEnds(wall, placed);
					checkHeights(wall, placed);
				}
			}
		}
		checkOverlaps(wall.getOpenings().stream().filter(draft::isClean).toList());
	}

	private void checkNames(Wall wall, List<Placed> all) {
		Map<String, SurveyRow> first = new HashMap<>();
		for (Placed placed : all.stream().sorted((a, b) -> Integer.compare(draft.rowOf(a).row(), draft.rowOf(b).row())).toList()) {
			SurveyRow row = draft.rowOf(placed);
			SurveyRow before = placed.getName() == null ? null : first.putIfAbsent(placed.getName(), row);
			if (before != null) {
				draft.refuse(row, SurveyColumn.NAME, NLS.bind(Messages.WallCheck_NameTwice, wall.getName(), before.row()));
			}
		}
	}

	private void checkEnds(Wall wall, Placed placed) {
		SurveyRow row = draft.rowOf(placed);
		if (placed.getX().signum() < 0) {
			draft.refuse(row, SurveyColumn.X, NLS.bind(Messages.WallCheck_BeforeStart, word(row), draft.shown(placed.getX())));
			return;
		}
		Length end = placed.getWidth() == null ? placed.getX() : placed.getX().plus(placed.getWidth());
		if (end.isMoreThan(wall.getLength())) {
			boolean hasWidth = !row.cell(SurveyColumn.WIDTH).isEmpty();
			draft.refuse(row, hasWidth ? SurveyColumn.WIDTH : SurveyColumn.X,
					NLS.bind(Messages.WallCheck_PastEnd,
							new Object[] { word(row), wall.getName(), draft.shown(wall.getLength()), draft.shown(end) }));
		}
	}

	/**
	 * On a raked wall heights are told from the floor line below, but some tell them from the floor at the left end: refused
	 * is only what is outside the wall by both.
	 */
	private void checkHeights(Wall wall, Placed placed) {
		if (placed.getY() == null || !draft.isClean(placed)) {
			return;
		}
		SurveyRow row = draft.rowOf(placed);
		WallShape shape = WallShape.of(wall);
		Length right = placed.getWidth() == null ? placed.getX() : placed.getX().plus(placed.getWidth());
		Length floor = shape.floorAt(placed.getX());
		if (placed.getY().isLessThan(floor.min(Length.ZERO))) {
			draft.refuse(row, SurveyColumn.Y, NLS.bind(Messages.WallCheck_BelowFloor, word(row), draft.shown(placed.getY())));
			return;
		}
		Length top = placed.getY().plus(placed.getHeight() == null ? Length.ZERO : placed.getHeight()).plus(floor.min(Length.ZERO));
		Length ceiling = isRaked(placed) ? shape.ceilingAt(placed.getX()).minus(floor.max(Length.ZERO)).max(shape.ceilingLeft())
				: shape.ceilingAt(placed.getX()).min(shape.ceilingAt(right));
		if (ceiling.signum() > 0 && top.isMoreThan(ceiling)) {
			boolean hasHeight = !row.cell(SurveyColumn.HEIGHT).isEmpty();
			draft.refuse(row, hasHeight ? SurveyColumn.HEIGHT : SurveyColumn.Y,
					NLS.bind(Messages.WallCheck_AboveCeiling, new Object[] { word(row), draft.shown(ceiling), draft.shown(top) }));
		}
	}

	private static boolean isRaked(Placed placed) {
		return placed instanceof ExistingTrim trim && Boolean.TRUE.equals(trim.getRaked());
	}

	/** Goes through the openings from left to right; each is told of once. */
	private void checkOverlaps(List<Opening> openings) {
		List<Opening> sorted = openings.stream().filter(WallCheck::hasOutline).sorted(Comparator.comparing(Opening::getX)).toList();
		for (int i = 0; i < sorted.size(); i++) {
			Outline outline = Outlines.of(sorted.get(i));
			for (int j = i + 1; j < sorted.size() && sorted.get(j).getX().isLessThan(outline.x1()); j++) {
				if (outline.overlaps(Outlines.of(sorted.get(j)))) {
					refuseOverlap(sorted.get(i), sorted.get(j));
					break;
				}
			}
		}
	}

	private static boolean hasOutline(Opening opening) {
		return opening.getX() != null && opening.getWidth() != null && opening.getHeight() != null;
	}

	private void refuseOverlap(Opening one, Opening other) {
		boolean isFirst = draft.rowOf(one).row() < draft.rowOf(other).row();
		SurveyRow first = draft.rowOf(isFirst ? one : other);
		SurveyRow second = draft.rowOf(isFirst ? other : one);
		draft.refuse(second, SurveyColumn.X,
				NLS.bind(Messages.WallCheck_Overlap, new Object[] { word(second), word(first), first.row() }));
	}

	private static String word(SurveyRow row) {
		return row.cell(SurveyColumn.KIND).toLowerCase(java.util.Locale.ROOT);
	}
}
