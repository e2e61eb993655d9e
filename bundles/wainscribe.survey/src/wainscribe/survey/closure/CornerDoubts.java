// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.closure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Corner;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;
import wainscribe.model.outline.CornerAngle;

/** Corners whose triangle says little, or something else than the angle given. */
final class CornerDoubts {

	/** A tape across a corner is read to about this. */
	private static final Length READING = Length.ofMillimetres(2);
	private static final double WORST_DEGREES = 1;
	private static final double LARGEST_DIFFERENCE = 2;

	private final LengthUnit units;

	CornerDoubts(LengthUnit units) {
		this.units = units;
	}

	List<Doubt> of(Room room) {
		List<Doubt> doubts = new ArrayList<>();
		for (Wall wall : room.getWalls()) {
			Corner corner = wall.getCorner();
			if (corner == null || corner.getLegThis() == null || corner.getLegNext() == null || corner.getDiagonal() == null) {
				continue;
			}
			BigDecimal angle = CornerAngle.of(wall);
			if (wall.getAngle() != null && Math.abs(wall.getAngle().subtract(angle).doubleValue()) > LARGEST_DIFFERENCE) {
				doubts.add(new Doubt(wall.getName(), "corner", //$NON-NLS-1$
						NLS.bind(Messages.CornerDoubts_AngleAgainstTriangle, wall.getAngle().toPlainString(), angle.setScale(1, RoundingMode.HALF_UP).toPlainString()), true));
			} else if (degreesPerReading(corner) > WORST_DEGREES) {
				doubts.add(new Doubt(wall.getName(), "corner", //$NON-NLS-1$
						NLS.bind(Messages.CornerDoubts_ShortLegs, shown(corner.getLegThis()), shown(corner.getLegNext())), true));
			}
		}
		return doubts;
	}

	/** How far the angle is out if the diagonal is misread: dC/dc = c / (a b sin C). */
	private static double degreesPerReading(Corner corner) {
		double a = corner.getLegThis().approximateMillimetres();
		double b = corner.getLegNext().approximateMillimetres();
		double c = corner.getDiagonal().approximateMillimetres();
		double cosine = (a * a + b * b - c * c) / (2 * a * b);
		double sine = Math.sqrt(Math.max(0, 1 - cosine * cosine));
		// Near a straight line any triangle is vague, whatever its legs.
		return sine < 0.2 ? 0 : Math.toDegrees(c / (a * b * sine)) * READING.approximateMillimetres();
	}

	private String shown(Length length) {
		return LengthFormat.asShown(length, units);
	}
}
