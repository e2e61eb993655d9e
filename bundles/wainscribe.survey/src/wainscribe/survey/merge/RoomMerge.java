// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.merge;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.common.util.EList;

import wainscribe.model.Brief;
import wainscribe.model.Corner;
import wainscribe.model.Diagonal;
import wainscribe.model.Element;
import wainscribe.model.Finish;
import wainscribe.model.Fixture;
import wainscribe.model.Paint;
import wainscribe.model.Placed;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.survey.SurveyChange.Kind;
import wainscribe.survey.draft.ElementIds;

/**
 * Brings a surveyed room into the one that is there.
 * <p>
 * What was measured is replaced. Decisions (brief, paints, frames, planned fixtures) and coatings are replaced only by rows
 * of the same kind, so that measuring again does not undo the designer's work.
 */
final class RoomMerge {

	private final Merge merge;
	private final Room room;
	private final Room found;
	private final Place place;
	private final Map<Wall, Wall> walls = new HashMap<>();

	RoomMerge(Merge merge, Room room, Room found) {
		this.merge = merge;
		this.room = room;
		this.found = found;
		this.place = new Place(room.getName(), ""); //$NON-NLS-1$
	}

	void run() {
		Set<String> used = idsOf(room);
		if (merge.takeAll(room, found)) {
			merge.changed(Kind.CHANGED, room.getName(), ""); //$NON-NLS-1$
		}
		boolean hasFrames = found.getWalls().stream().anyMatch(wall -> !wall.getPlacedFrames().isEmpty());
		merge.list(room.getWalls(), found.getWalls(), wall -> false, (old, surveyed) -> mergeWall(old, surveyed, hasFrames), place);
		found.getDiagonals().forEach(this::redirect);
		merge.list(room.getDiagonals(), found.getDiagonals(), each -> false, this::mergeSame, place);
		if (!found.getFinishes().isEmpty()) {
			merge.list(room.getFinishes(), found.getFinishes(), each -> false, this::mergeFinish, place);
		}
		mergePaints(merge, room.getPaints(), found.getPaints(), place);
		room.setBrief(mergedBrief(merge, room.getBrief(), found.getBrief(), place));
		ElementIds.assign(room, used);
	}

	private void mergeWall(Wall old, Wall surveyed, boolean hasFrames) {
		walls.put(surveyed, old);
		Place onWall = new Place(room.getName(), old.getName());
		mergeSame(old, surveyed);
		mergeCorner(old, surveyed, onWall);
		mergeList(old.getOpenings(), surveyed.getOpenings(), onWall);
		merge.list(old.getFixtures(), surveyed.getFixtures(), fixture -> Boolean.TRUE.equals(fixture.getPlanned()),
				(Fixture one, Fixture other) -> mergePlaced(one, other, onWall), onWall);
		mergeList(old.getBoxes(), surveyed.getBoxes(), onWall);
		mergeList(old.getTrims(), surveyed.getTrims(), onWall);
		mergeList(old.getServices(), surveyed.getServices(), onWall);
		if (hasFrames) {
			mergeList(old.getPlacedFrames(), surveyed.getPlacedFrames(), onWall);
		}
	}

	private <T extends Placed> void mergeList(EList<T> old, EList<T> surveyed, Place onWall) {
		merge.list(old, surveyed, each -> false, (one, other) -> mergePlaced(one, other, onWall), onWall);
	}

	private void mergePlaced(Placed old, Placed surveyed, Place onWall) {
		if (merge.takeAll(old, surveyed)) {
			merge.changed(Kind.CHANGED, onWall.room(), onWall.path(old));
		}
	}

	private void mergeCorner(Wall old, Wall surveyed, Place onWall) {
		Corner corner = surveyed.getCorner();
		if (corner == null && old.getCorner() != null) {
			merge.changed(Kind.REMOVED, onWall.room(), onWall.path(old.getCorner()));
			old.setCorner(null);
		} else if (corner != null && old.getCorner() == null) {
			corner.setId(null);
			old.setCorner(corner);
			merge.changed(Kind.ADDED, onWall.room(), onWall.path(corner));
		} else if (corner != null && merge.takeAll(old.getCorner(), corner)) {
			merge.changed(Kind.CHANGED, onWall.room(), onWall.path(old.getCorner()));
		}
	}

	/** Walls that were there stay the same objects, so diagonals must end at those. */
	private void redirect(Diagonal diagonal) {
		diagonal.setFrom(walls.getOrDefault(diagonal.getFrom(), diagonal.getFrom()));
		diagonal.setTo(walls.getOrDefault(diagonal.getTo(), diagonal.getTo()));
	}

	private void mergeSame(Element old, Element surveyed) {
		if (merge.takeAll(old, surveyed)) {
			merge.changed(Kind.CHANGED, place.room(), place.path(old));
		}
	}

	private void mergeFinish(Finish old, Finish surveyed) {
		mergeSame(old, surveyed);
	}

	static void mergePaints(Merge merge, EList<Paint> old, EList<Paint> surveyed, Place place) {
		if (!surveyed.isEmpty()) {
			merge.list(old, surveyed, each -> false, (one, other) -> {
				if (merge.takeAll(one, other)) {
					merge.changed(Kind.CHANGED, place.room(), place.path(one));
				}
			}, place);
		}
	}

	static Brief mergedBrief(Merge merge, Brief old, Brief surveyed, Place place) {
		if (surveyed == null) {
			return old;
		}
		if (old == null) {
			surveyed.setId(null);
			merge.changed(Kind.ADDED, place.room(), place.path(surveyed));
			return surveyed;
		}
		if (merge.takeGiven(old, surveyed)) {
			merge.changed(Kind.CHANGED, place.room(), place.path(old));
		}
		return old;
	}

	static Set<String> idsOf(Element root) {
		Set<String> ids = new HashSet<>();
		ids.add(root.getId());
		root.eAllContents().forEachRemaining(each -> {
			if (each instanceof Element element) {
				ids.add(element.getId());
			}
		});
		return ids;
	}
}
