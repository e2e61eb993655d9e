// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.setout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import wainscribe.layout.RailBand;
import wainscribe.layout.Tier;
import wainscribe.layout.WallLayout;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/**
 * The marks of a wall on one stick at full size: along the wall from its left end, or upwards from the finished floor there.
 *
 * @param wall    name of the wall
 * @param upwards whether the stick stands upright
 * @param length  from the datum to the end of the wall, or to the highest mark
 * @param marks   from the datum on; each rounded once, none from another
 */
public record StoryStick(String wall, boolean upwards, Length length, List<StickMark> marks) {

	/**
	 * A mark of a stick.
	 *
	 * @param mark  where it is
	 * @param names what begins or ends there, by frame or strip id and edge; {@link #RAIL} for the rail
	 */
	public record StickMark(Mark mark, List<String> names) {

		/** Copies the list. */
		public StickMark {
			Objects.requireNonNull(mark);
			names = List.copyOf(names);
		}
	}

	/** Stands for the rail among the names. */
	public static final String RAIL = "rail"; //$NON-NLS-1$

	/** Refuses nulls and copies the list. */
	public StoryStick {
		Objects.requireNonNull(wall);
		Objects.requireNonNull(length);
		marks = List.copyOf(marks);
	}

	/** Gathers marks that fall on one place of the tape. */
	private static final class Gathered {

		private final Map<Length, Mark> marks = new LinkedHashMap<>();
		private final Map<Length, List<String>> names = new LinkedHashMap<>();

		void add(Mark mark, String name) {
			marks.putIfAbsent(mark.onTape(), mark);
			List<String> there = names.computeIfAbsent(mark.onTape(), key -> new ArrayList<>());
			if (!there.contains(name)) {
				there.add(name);
			}
		}

		List<StickMark> sorted() {
			return marks.values().stream().sorted(Comparator.comparing(Mark::onTape))
					.map(mark -> new StickMark(mark, names.get(mark.onTape()))).toList();
		}
	}

	/**
	 * Returns the stick along a wall with the left and right edges of its frames and strips.
	 *
	 * @param layout the wall
	 * @param units  unit of the tape
	 */
	public static StoryStick along(WallLayout layout, LengthUnit units) {
		SetOut setOut = SetOut.of(layout, units);
		Gathered gathered = new Gathered();
		setOut.runs().stream().flatMap(run -> run.frames().stream()).forEach(frame -> {
			gathered.add(frame.left(), frame.id());
			gathered.add(frame.right(), frame.id());
		});
		setOut.strips().forEach(strip -> {
			gathered.add(strip.left(), strip.id());
			gathered.add(strip.right(), strip.id());
		});
		Length length = layout.wall().getLength() == null ? Length.ZERO : layout.wall().getLength();
		return new StoryStick(name(layout), false, length, gathered.sorted());
	}

	/**
	 * Returns the stick up a wall with the heights of its frames by tier, its level strips and the rail; on a raked wall the
	 * heights at the left edge of each, as they differ.
	 *
	 * @param layout the wall
	 * @param rail   the rail, null without one
	 * @param units  unit of the tape
	 */
	public static StoryStick up(WallLayout layout, RailBand rail, LengthUnit units) {
		SetOut setOut = SetOut.of(layout, units);
		Gathered gathered = new Gathered();
		for (RunMarks run : setOut.runs()) {
			for (FrameMarks frame : run.frames()) {
				String name = isLevel(frame) ? tier(run.tier()) : frame.id();
				gathered.add(frame.bottomLeft(), name);
				gathered.add(frame.topLeft(), name);
			}
		}
		setOut.strips().stream().filter(strip -> !strip.kind().isUpright()).forEach(strip -> {
			gathered.add(strip.bottomLeft(), strip.id());
			gathered.add(strip.topLeft(), strip.id());
		});
		if (rail != null) {
			gathered.add(Mark.of(rail.bottom(), units), RAIL);
			gathered.add(Mark.of(rail.top(), units), RAIL);
		}
		List<StickMark> marks = gathered.sorted();
		return new StoryStick(name(layout), true, marks.isEmpty() ? Length.ZERO : marks.getLast().mark().onTape(), marks);
	}

	private static boolean isLevel(FrameMarks frame) {
		return frame.bottomLeft().equals(frame.bottomRight()) && frame.topLeft().equals(frame.topRight());
	}

	private static String tier(Tier tier) {
		return tier.word();
	}

	private static String name(WallLayout layout) {
		return layout.wall().getName() == null ? "" : layout.wall().getName(); //$NON-NLS-1$
	}
}
