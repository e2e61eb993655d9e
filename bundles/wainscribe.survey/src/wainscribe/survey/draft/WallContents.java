// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.draft;

import java.util.Optional;
import java.util.Set;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Box;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Fixture;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Placed;
import wainscribe.model.PlacedFrame;
import wainscribe.model.Room;
import wainscribe.model.Service;
import wainscribe.model.ServiceKind;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Wall;
import wainscribe.survey.SurveyColumn;
import wainscribe.survey.SurveyRow;
import wainscribe.survey.form.RowForm;
import wainscribe.survey.form.RowKind;

/** Puts doors, windows, boxes, fixtures, trim, services and placed frames on their walls. */
final class WallContents {

	private final SurveyDraft draft;
	private final RowFiller filler;
	private final Placement placement;

	WallContents(SurveyDraft draft, RowFiller filler) {
		this.draft = draft;
		this.filler = filler;
		this.placement = new Placement(draft);
	}

	/** Finds the wall a row names; refuses the row if there is none. */
	Optional<Wall> wallOf(SurveyRow row, Room room) {
		String name = row.cell(SurveyColumn.WALL);
		Optional<Wall> found = room.getWalls().stream().filter(wall -> name.equals(wall.getName())).findFirst();
		if (found.isEmpty()) {
			draft.refuse(row, SurveyColumn.WALL,
					NLS.bind(Messages.WallContents_UnknownWall, DraftBuilder.list(room.getWalls().stream().map(Wall::getName).toList())));
		}
		return found;
	}

	/** Takes a row in. */
	void take(RowKind kind, SurveyRow row, RowForm form, Wall wall) {
		Placed placed = added(kind, wall);
		DraftBuilder.name(placed, row.cell(SurveyColumn.NAME));
		Set<String> keys = filler.fill(placed, row, form, wall.getRoom());
		placement.complete(kind, placed, wall, row, keys);
	}

	private static Placed added(RowKind kind, Wall wall) {
		return switch (kind) {
			case DOOR, WINDOW -> {
				Opening opening = WainscribeFactory.eINSTANCE.createOpening();
				opening.setKind(kind == RowKind.DOOR ? OpeningKind.DOOR : OpeningKind.WINDOW);
				wall.getOpenings().add(opening);
				yield opening;
			}
			case BOX -> {
				Box box = WainscribeFactory.eINSTANCE.createBox();
				wall.getBoxes().add(box);
				yield box;
			}
			case FIXTURE -> {
				Fixture fixture = WainscribeFactory.eINSTANCE.createFixture();
				wall.getFixtures().add(fixture);
				yield fixture;
			}
			case TRIM -> {
				ExistingTrim trim = WainscribeFactory.eINSTANCE.createExistingTrim();
				wall.getTrims().add(trim);
				yield trim;
			}
			case FRAME -> {
				PlacedFrame frame = WainscribeFactory.eINSTANCE.createPlacedFrame();
				wall.getPlacedFrames().add(frame);
				yield frame;
			}
			default -> {
				Service service = WainscribeFactory.eINSTANCE.createService();
				service.setKind(ServiceKind.get(kind.word()));
				wall.getServices().add(service);
				yield service;
			}
		};
	}
}
