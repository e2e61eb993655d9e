// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.axes;

import java.util.List;
import java.util.Objects;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.Tier;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/**
 * How the frames of one tier of a wall lie about an axis: the frame or the space between two frames whose middle is nearest to
 * the axis, and how far that middle is from it. Reported, never optimised.
 *
 * @param axis   the axis
 * @param tier   the tier
 * @param frames id of the frame, or of the two frames on either side of the space
 * @param off    from the axis to that middle; above zero where the middle lies right of the axis
 */
public record AxisFit(WallAxis axis, Tier tier, List<String> frames, Length off) {

	/** Nearer than a tape shows reads as centred: 1/16 in (common practice). */
	private static final Length TAPE = Length.ofInches(1, 16);

	/** Refuses nulls and copies the list. */
	public AxisFit {
		Objects.requireNonNull(axis);
		Objects.requireNonNull(tier);
		Objects.requireNonNull(off);
		frames = List.copyOf(frames);
	}

	/** Returns the wall. */
	public Wall wall() {
		return axis.wall();
	}

	/** Tells whether a frame is nearest; else it is the space between two. */
	public boolean isFrame() {
		return frames.size() == 1;
	}

	/** Tells whether the axis and the middle are one to the eye: not more than 1/16 in apart. */
	public boolean isCentred() {
		return !off.abs().isMoreThan(TAPE);
	}

	/** Returns the finding as a sentence. */
	public String sentence(LengthUnit unit) {
		String what = isFrame() ? NLS.bind(Messages.AxisFit_Frame, frames.getFirst())
				: NLS.bind(Messages.AxisFit_Space, frames.getFirst(), frames.getLast());
		return isCentred() ? NLS.bind(Messages.AxisFit_Centred, what)
				: NLS.bind(off.signum() > 0 ? Messages.AxisFit_Right : Messages.AxisFit_Left, what,
						LengthFormat.asTapeMark(off.abs(), unit));
	}

	/** Returns the finding in two or three words, for the drawing. */
	public String note(LengthUnit unit) {
		return isCentred() ? Messages.AxisFit_NoteCentred
				: NLS.bind(off.signum() > 0 ? Messages.AxisFit_NoteRight : Messages.AxisFit_NoteLeft,
						LengthFormat.asTapeMark(off.abs(), unit));
	}
}
