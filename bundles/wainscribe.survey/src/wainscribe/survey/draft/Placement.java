// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.draft;

import java.util.Optional;
import java.util.Set;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Fixture;
import wainscribe.model.Placed;
import wainscribe.model.TrimType;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.WallShape;
import wainscribe.survey.SurveyColumn;
import wainscribe.survey.SurveyProblem.Severity;
import wainscribe.survey.SurveyRow;
import wainscribe.survey.form.PlateSize;
import wainscribe.survey.form.RowKind;

/** Completes the outline of what sits on a wall: what goes without saying, plates by their gangs, centres to corners. */
final class Placement {

	private static final String AT = "at"; //$NON-NLS-1$
	private static final String TYPE = "type"; //$NON-NLS-1$

	private final SurveyDraft draft;

	Placement(SurveyDraft draft) {
		this.draft = draft;
	}

	/**
	 * Completes the outline.
	 *
	 * @param keys keys of the note
	 */
	void complete(RowKind kind, Placed placed, Wall wall, SurveyRow row, Set<String> keys) {
		boolean needsType = kind == RowKind.FIXTURE || kind == RowKind.TRIM;
		if (needsType && !keys.contains(TYPE)) {
			draft.refuse(row, SurveyColumn.NOTE, NLS.bind(Messages.Placement_NoType, (kind == RowKind.TRIM ? "base" : "mirror"))); //$NON-NLS-1$ //$NON-NLS-2$
		}
		if (!draft.isClean(placed)) {
			return;
		}
		switch (placed) {
			case Box box -> completePlate(box, row);
			case ExistingTrim trim -> completeTrim(trim, wall, row);
			case Fixture fixture -> completeFixture(fixture, row);
			default -> completeY(placed, kind == RowKind.DOOR);
		}
		if (keys.contains(AT) && draft.isClean(placed)) {
			fromCentre(placed, kind, row);
		}
	}

	private static void completeY(Placed placed, boolean isOnFloor) {
		if (placed.getY() == null && isOnFloor) {
			placed.setY(Length.ZERO);
		}
	}

	private void completePlate(Box box, SurveyRow row) {
		if (box.getWidth() != null && box.getHeight() != null) {
			return;
		}
		if (box.getGang() == null && box.getType() == BoxType.PANEL) {
			draft.refuse(row, box.getWidth() == null ? SurveyColumn.WIDTH : SurveyColumn.HEIGHT, Messages.Placement_PanelSize);
			return;
		}
		int gangs = box.getGang() == null ? 1 : box.getGang();
		Optional<PlateSize> size = PlateSize.usual(draft.home().getCountry(), draft.units(), gangs);
		if (size.isEmpty()) {
			draft.refuse(row, SurveyColumn.WIDTH, NLS.bind(Messages.Placement_PlateSize, gangs));
			return;
		}
		box.setWidth(box.getWidth() == null ? size.get().width() : box.getWidth());
		box.setHeight(box.getHeight() == null ? size.get().height() : box.getHeight());
		String country = draft.home().getCountry();
		if (box.getGang() == null || !PlateSize.isKnown(country)) {
			// Without a country the unit tells which plates are usual; that is no reason to measure again.
			boolean isDoubtful = box.getGang() == null || country != null;
			draft.add(row, SurveyColumn.WIDTH, isDoubtful ? Severity.WARNING : Severity.NOTICE,
					NLS.bind(Messages.Placement_PlateTaken, draft.shown(box.getWidth()), draft.shown(box.getHeight())));
		}
	}

	private void completeTrim(ExistingTrim trim, Wall wall, SurveyRow row) {
		if (trim.getX() == null) {
			trim.setX(Length.ZERO);
		}
		if (trim.getY() != null) {
			return;
		}
		WallShape shape = WallShape.of(wall);
		if (trim.getType() == TrimType.BASE || trim.getType() == TrimType.CASING) {
			trim.setY(Length.ZERO);
		} else if (trim.getType() == TrimType.CROWN && shape.ceilingLeft().isMoreThan(trim.getHeight())) {
			trim.setY(shape.ceilingLeft().minus(trim.getHeight()));
		} else {
			draft.refuse(row, SurveyColumn.Y, Messages.Placement_LowerEdge);
		}
	}

	private void completeFixture(Fixture fixture, SurveyRow row) {
		String what = fixture.getType().getLiteral();
		completeY(fixture, isOnFloor(fixture));
		if (fixture.getY() == null) {
			draft.refuse(row, SurveyColumn.Y, NLS.bind(Messages.Placement_HeightAboveFloor, what));
		}
		if (!needsSize(fixture)) {
			return;
		}
		if (fixture.getWidth() == null) {
			draft.refuse(row, SurveyColumn.WIDTH, NLS.bind(Messages.Placement_Width, what));
		}
		if (fixture.getHeight() == null) {
			draft.refuse(row, SurveyColumn.HEIGHT, NLS.bind(Messages.Placement_Height, what));
		}
	}

	private static boolean isOnFloor(Fixture fixture) {
		return switch (fixture.getType()) {
			case TOILET, BIDET, VANITY, TUB, SHOWER, RANGE, APPLIANCE, WASHER, FIREPLACE -> true;
			default -> false;
		};
	}

	/** Things that stop a run of frames are of no use without their size. */
	private static boolean needsSize(Fixture fixture) {
		return switch (fixture.getType()) {
			case TOWEL_RING, ROBE_HOOK, TP_HOLDER, GRAB_BAR, TOWEL_BAR, SCONCE, ART, SHELF, THERMOSTAT, KEYPAD, HANDRAIL -> false;
			default -> true;
		};
	}

	private void fromCentre(Placed placed, RowKind kind, SurveyRow row) {
		boolean hasSize = kind != RowKind.STUD && kind != RowKind.PIPE && kind != RowKind.CABLE;
		if (placed.getWidth() == null && hasSize) {
			draft.refuse(row, SurveyColumn.WIDTH, Messages.Placement_WidthOfCentre);
		} else if (placed.getWidth() != null) {
			placed.setX(placed.getX().minus(placed.getWidth().dividedBy(2)));
		}
		if (row.cell(SurveyColumn.Y).isEmpty()) {
			return;
		}
		if (placed.getHeight() == null && hasSize) {
			draft.refuse(row, SurveyColumn.HEIGHT, Messages.Placement_HeightOfCentre);
		} else if (placed.getHeight() != null) {
			placed.setY(placed.getY().minus(placed.getHeight().dividedBy(2)));
		}
	}
}
