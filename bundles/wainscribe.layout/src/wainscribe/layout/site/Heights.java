// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import wainscribe.layout.EffectiveBrief;
import wainscribe.layout.pattern.TrimHeights;
import wainscribe.model.ExistingTrim;
import wainscribe.model.Room;
import wainscribe.model.TrimType;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.WallShape;

/** Finds the heights that run level round a room: the highest base that stays, the largest crown that stays, the rail. */
final class Heights {

	private Heights() {
	}

	static TrimHeights of(Room room, EffectiveBrief brief) {
		Length base = kept(room, TrimType.BASE, Heights::top).orElse(brief.base());
		Length crown = kept(room, TrimType.CROWN, Heights::drop).orElse(brief.crown());
		return new TrimHeights(base, brief.railTop().minus(brief.rail().face()), brief.railTop(), crown);
	}

	private static Optional<Length> kept(Room room, TrimType type, Function<ExistingTrim, Length> measure) {
		Stream<ExistingTrim> trims = room.getWalls().stream().flatMap(wall -> wall.getTrims().stream())
				.filter(trim -> trim.getType() == type && !Boolean.FALSE.equals(trim.getKeep()));
		return trims.map(measure).filter(Objects::nonNull).max(Comparator.naturalOrder());
	}

	private static Length top(ExistingTrim base) {
		return base.getHeight() == null ? null : base.getY() == null ? base.getHeight() : base.getY().plus(base.getHeight());
	}

	/** A crown whose lower edge was measured comes down to there; else its face is taken as the drop. */
	private static Length drop(ExistingTrim crown) {
		if (crown.getY() != null && crown.getY().signum() > 0 && crown.eContainer() instanceof Wall wall) {
			Length drop = WallShape.of(wall).ceilingLeft().minus(crown.getY());
			if (drop.signum() > 0) {
				return drop;
			}
		}
		return crown.getHeight();
	}
}
