// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.List;

import wainscribe.layout.MouldingSection;
import wainscribe.layout.RoomDesign;
import wainscribe.model.Material;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.outline.WallShape;

/**
 * What runs round a room.
 *
 * @param kind     rail, base or crown
 * @param section  its moulding
 * @param material what it is made of
 * @param coped    whether material and section can be coped
 * @param bottom   its lower edge above the floor line; of a crown its drop below the ceiling line
 * @param top      its upper edge above the floor line; of a crown zero
 * @param notes    what was assumed of it
 */
record RunSpec(PieceKind kind, MouldingSection section, Material material, boolean coped, Length bottom, Length top,
		List<String> notes) {

	boolean isCrown() {
		return kind == PieceKind.CROWN;
	}

	/** Returns what stands in its way on a wall. */
	Obstructions obstructions(RoomDesign design, Wall wall) {
		if (!isCrown()) {
			return new Obstructions(design, kind, bottom, top);
		}
		WallShape shape = WallShape.of(wall);
		Length ceiling = shape.ceilingLeft().min(shape.ceilingRight().minus(shape.floorRight()));
		return new Obstructions(design, kind, ceiling.minus(bottom), ceiling.max(shape.ceilingLeft()));
	}

	/** Returns how far its line climbs on a wall between two places. */
	Length rise(Wall wall, Length from, Length to) {
		WallShape shape = WallShape.of(wall);
		return isCrown() ? shape.ceilingAt(to).minus(shape.ceilingAt(from)) : shape.floorAt(to).minus(shape.floorAt(from));
	}

	/** Returns its pitch; a crown's cut across the face comes from its spring, and on a sloping ceiling it is fitted on site. */
	double pitch(Wall wall) {
		WallShape shape = WallShape.of(wall);
		return isCrown() ? 0 : Mitre.pitch(shape.length(), shape.floorRight());
	}
}
