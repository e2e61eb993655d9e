// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.StringJoiner;

import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/** A survey with random contents that are all right: rectangular rooms, things placed clear of each other. */
final class GeneratedSurvey {

	private static final List<String> FIXTURES = List.of("toilet", "mirror", "towel-bar", "heater", "grille", "cabinet", "art", "thermostat");

	private final Random random;
	private final LengthUnit unit;
	private final StringBuilder text = new StringBuilder();

	GeneratedSurvey(long seed, LengthUnit unit) {
		this.random = new Random(seed);
		this.unit = unit;
	}

	String text() {
		text.append("# units: ").append(unit.symbol()).append('\n').append(Surveys.HEADER);
		row("home", "", "", "Client " + random.nextInt(9), "", "", "", "", "", "", "built=" + (1850 + random.nextInt(170)) + ";country=" + any("US", "UK", "IE", "CA", "FR"));
		row("brief", "", "", "", "", "", "", "", "", "", "rail=" + length(800, 1000) + ";frame-width=" + length(200, 300) + ".." + length(301, 900) + ";stock=" + length(2000, 3000) + "|" + length(3001, 5000));
		for (int i = 0; i <= random.nextInt(3); i++) {
			room("Room " + i);
		}
		return text.toString();
	}

	private void room(String room) {
		row("room", room, "", "", "", "", "", length(2300, 3500), "", "", "use=" + any("kitchen", "living", "stair") + ";rh=" + random.nextInt(101) + "%;air=" + random.nextInt(30) + "." + random.nextInt(10) + "C");
		String width = length(3000, 9000);
		String depth = length(3000, 9000);
		for (int i = 0; i < 4; i++) {
			String bow = any("", "bow=" + length(0, 9) + ";", "floor-right=" + length(0, 900) + ";");
			row("wall", room, "W" + i, "", "", "", i % 2 == 0 ? width : depth, any("", length(2300, 3500)), "", any("", "90"), bow + any("stud=unknown", "plumbing=no", "x-ray=none"));
		}
		for (int i = 0; i < 4; i++) {
			wall(room, "W" + i);
		}
		row("diagonal", room, "", any("", "across"), "", "", length(3000, 9000), "", "", "", "from=W0;to=W2");
		row("finish", room, any("", "W1", "W0|W3"), "old", "", "", "", "", "", "", "surface=" + any("walls", "trim") + ";gloss=G" + (1 + random.nextInt(7)));
		row("paint", room, any("", "W2"), "new", "", "", "", "", "", "", "surface=lower;coats=" + (1 + random.nextInt(9)) + ";clean=" + any("yes", "no"));
		row("brief", room, "", "", "", "", "", "", "", "", "gap=" + length(50, 190) + ";board-walls=W0|W2");
	}

	private void wall(String room, String wall) {
		row("corner", room, wall, "", "", "", "900mm", "1200mm", length(1490, 1510), "", "");
		row(any("door", "window"), room, wall, "opening", length(50, 300), length(0, 90), length(400, 700), length(700, 2000), any("", length(0, 150)), "", "casing=" + length(0, 100) + any("", ";glazing=tempered", ";swing=in-left"));
		row("box", room, wall, any("", "plate"), length(1200, 1300), length(200, 1200), "", "", "", "", "gang=" + (1 + random.nextInt(2)) + any("", ";at=centre", ";gfci=yes"));
		row("fixture", room, wall, any("", "thing"), length(1500, 1600), length(0, 1000), length(100, 900), length(100, 900), any("", length(1, 400)), "", "type=" + FIXTURES.get(random.nextInt(FIXTURES.size())) + any("", ";mass=" + random.nextInt(50) + "kg", ";new=yes"));
		row("trim", room, wall, "", any("", length(0, 100)), "", any("", length(500, 2500)), length(50, 200), length(5, 30), "", "type=base;keep=" + any("yes", "no"));
		row(any("stud", "pipe", "cable"), room, wall, "", length(0, 2900), any("", length(0, 2000)), "", "", any("", length(0, 80)), "", "");
		row("frame", room, wall, any("", "frame"), length(2000, 2200), length(100, 200), length(200, 600), length(200, 900), "", "", "");
	}

	private void row(String... cells) {
		StringJoiner joiner = new StringJoiner(",", "", "\n");
		for (String cell : cells) {
			joiner.add(cell.indexOf('"') >= 0 || cell.indexOf(',') >= 0 ? '"' + cell.replace("\"", "\"\"") + '"' : cell);
		}
		text.append(joiner);
	}

	private String any(String... choices) {
		return choices[random.nextInt(choices.length)];
	}

	/** A length between two in millimetres: on an inch tape, a metric tape, or finer than both. */
	private String length(int least, int most) {
		long low = least * Length.UNITS_PER_MILLIMETRE;
		long units = low + (long) (random.nextDouble() * (most * Length.UNITS_PER_MILLIMETRE - low));
		Length length = switch (random.nextInt(3)) {
			case 0 -> new Length((units + 3174) / 3175 * 3175);
			case 1 -> new Length((units + 7999) / 8000 * 8000);
			default -> Length.ofMillimetres(new Length(units).toMillimetres().setScale(3, java.math.RoundingMode.CEILING).max(BigDecimal.valueOf(least)));
		};
		return random.nextBoolean() ? LengthFormat.asMeasured(length, unit) : LengthFormat.asStored(length);
	}
}
