// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import wainscribe.fabrication.Obstructions.Obstruction;
import wainscribe.fabrication.Stretch.Halt;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/** Finds the stretches of a wall that a run of moulding can take. */
final class Stretches {

	private Stretches() {
	}

	/** Returns the clear stretches from left to right; none is empty. */
	static List<Stretch> of(Wall wall, Obstructions obstructions) {
		Length end = wall.getLength() == null ? Length.ZERO : wall.getLength();
		List<Obstruction> inWay = new ArrayList<>(obstructions.on(wall));
		inWay.sort(Comparator.comparing(Obstruction::x0).thenComparing(Obstruction::x1));
		List<Stretch> clear = new ArrayList<>();
		Length x = Length.ZERO;
		Halt left = Halt.AT_CORNER;
		for (Obstruction obstruction : inWay) {
			Length stop = obstruction.x0().min(end);
			if (stop.isMoreThan(x)) {
				clear.add(new Stretch(x, stop, left, stop.equals(end) && obstruction.x0().isMoreThan(end) ? Halt.AT_CORNER : obstruction.halt()));
			}
			if (obstruction.x1().isMoreThan(x)) {
				x = obstruction.x1();
				left = obstruction.halt();
			}
		}
		if (end.isMoreThan(x)) {
			clear.add(new Stretch(x, end, left, Halt.AT_CORNER));
		}
		return clear;
	}
}
