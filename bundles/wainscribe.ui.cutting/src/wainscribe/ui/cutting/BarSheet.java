// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import wainscribe.model.length.Length;
import wainscribe.takeoff.cutting.HomePlan;
import wainscribe.takeoff.cutting.PlannedBar;
import wainscribe.takeoff.cutting.PlannedPiece;
import wainscribe.takeoff.cutting.StockKind;

/**
 * Where bars and pieces lie on a sheet of a width: bars one below the other under a heading for each moulding, all in one scale.
 * Measures in pixels.
 *
 * @param rows   headings and bars from top to bottom
 * @param height of the whole sheet
 */
record BarSheet(List<Row> rows, int height) {

	private static final int SIDE = 12;
	private static final int STRIP = 22;
	private static final int BETWEEN = 10;
	private static final int LEAST_WIDTH = 160;

	BarSheet {
		rows = List.copyOf(rows);
	}

	/** A line of the sheet. */
	sealed interface Row {

		/** Returns its upper edge. */
		int y();
	}

	/** A heading. */
	record Heading(int y, String text) implements Row {
	}

	/**
	 * A bar.
	 *
	 * @param y        upper edge of its words
	 * @param strip    upper edge of its drawing
	 * @param x        left end
	 * @param width    of the whole bar
	 * @param trim     width of the end trim
	 * @param bar      the bar
	 * @param accepted whether it belongs to an accepted plan
	 * @param parts    its pieces from left to right
	 */
	record Strip(int y, int strip, int x, int width, int trim, PlannedBar bar, boolean accepted, List<Part> parts) implements Row {

		Strip {
			parts = List.copyOf(parts);
		}

		/** Returns the height of the drawing. */
		int height() {
			return STRIP;
		}

		/** Returns where the leftover begins. */
		int end() {
			return parts.isEmpty() ? x : parts.getLast().x() + parts.getLast().width();
		}
	}

	/** A piece on a bar. */
	record Part(PlannedPiece piece, int x, int width) {
	}

	/** A piece with the bar it is on. */
	record Place(Strip strip, Part part) {
	}

	/**
	 * Lays a plan out.
	 *
	 * @param plan     the plan
	 * @param width    of the sheet
	 * @param line     height of a line of words
	 * @param name     finds the words for a moulding
	 * @param accepted heading of the bars of accepted plans
	 */
	static BarSheet of(HomePlan plan, int width, int line, Function<StockKind, String> name, String accepted) {
		Objects.requireNonNull(name);
		Length longest = Stream.concat(plan.bars().stream(), plan.accepted().stream()).map(PlannedBar::length)
				.reduce(Length.ofMillimetres(1), Length::max);
		double scale = (Math.max(LEAST_WIDTH, width) - 2 * SIDE) / longest.approximateMillimetres();
		Layout layout = new Layout(plan, scale, line);
		StockKind kind = null;
		for (PlannedBar bar : plan.bars()) {
			if (!bar.kind().equals(kind)) {
				kind = bar.kind();
				layout.heading(name.apply(kind));
			}
			layout.bar(bar, false);
		}
		if (!plan.accepted().isEmpty()) {
			layout.heading(accepted);
			plan.accepted().forEach(bar -> layout.bar(bar, true));
		}
		return new BarSheet(layout.rows, layout.y + BETWEEN);
	}

	/** Finds the piece at a point. */
	Optional<Place> at(int x, int y) {
		return places().stream().filter(place -> y >= place.strip().strip() && y < place.strip().strip() + STRIP
				&& x >= place.part().x() && x < place.part().x() + place.part().width()).findFirst();
	}

	/** Returns all pieces in the order of reading. */
	List<Place> places() {
		return strips().stream().flatMap(strip -> strip.parts().stream().map(part -> new Place(strip, part))).toList();
	}

	/** Returns the bars. */
	List<Strip> strips() {
		return rows.stream().filter(Strip.class::isInstance).map(Strip.class::cast).toList();
	}

	/** Finds where a piece lies. */
	Optional<Place> placeOf(PlannedPiece piece) {
		return places().stream().filter(place -> place.part().piece().equals(piece)).findFirst();
	}

	/** Puts one row below the other. */
	private static final class Layout {

		private final List<Row> rows = new ArrayList<>();
		private final HomePlan plan;
		private final double scale;
		private final int line;
		private int y = BETWEEN;

		Layout(HomePlan plan, double scale, int line) {
			this.plan = plan;
			this.scale = scale;
			this.line = line;
		}

		void heading(String text) {
			y += rows.isEmpty() ? 0 : BETWEEN;
			rows.add(new Heading(y, text));
			y += line + BETWEEN / 2;
		}

		void bar(PlannedBar bar, boolean accepted) {
			double kerf = plan.decisions().kerf().approximateMillimetres();
			double trim = plan.decisions().endTrim().approximateMillimetres();
			List<Part> parts = new ArrayList<>();
			double at = trim;
			for (PlannedPiece piece : bar.pieces()) {
				double end = at + piece.length().approximateMillimetres();
				int left = pixels(at);
				parts.add(new Part(piece, SIDE + left, Math.max(1, pixels(end) - left - 1)));
				at = end + kerf;
			}
			int width = pixels(bar.length().approximateMillimetres());
			rows.add(new Strip(y, y + line + 2, SIDE, width, pixels(trim), bar, accepted, parts));
			y += line + 2 + STRIP + BETWEEN;
		}

		private int pixels(double millimetres) {
			return (int) Math.round(millimetres * scale);
		}
	}
}
