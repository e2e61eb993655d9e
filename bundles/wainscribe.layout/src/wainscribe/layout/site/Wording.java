// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.site;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.solver.RoomTask;
import wainscribe.model.Box;
import wainscribe.model.BoxType;
import wainscribe.model.Fixture;
import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.Placed;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/** Words for lengths, counts and surveyed things in the sentences that go with a layout. */
final class Wording {

	private final LengthUnit units;

	Wording(LengthUnit units) {
		this.units = units;
	}

	/** Returns a length as the home writes it, rounded once. */
	String length(long value) {
		return LengthFormat.asTapeMark(new Length(value), units);
	}

	/** Returns a sentence with a length in it. */
	String bind(String sentence, Length value) {
		return NLS.bind(sentence, length(value.units()));
	}

	/** Returns a length to 1/64 in or 0.1 mm. */
	String exact(Length value) {
		return LengthFormat.asShown(value, units);
	}

	/** Returns a thing with its place: {@code the outlet at 62 1/4"}. */
	String thing(Placed placed) {
		long x = placed.getX() == null ? 0 : placed.getX().units();
		return NLS.bind(Messages.Wording_ThingAt, kind(placed), length(x));
	}

	private static String kind(Placed placed) {
		if (placed instanceof Box box) {
			return box(box.getType());
		}
		if (placed instanceof Opening opening) {
			return opening.getKind() == OpeningKind.WINDOW ? Messages.Wording_Window : Messages.Wording_Door;
		}
		if (placed instanceof Fixture fixture && fixture.getType() != null) {
			return fixture.getType().getLiteral().replace('-', ' ').toLowerCase(Locale.ROOT);
		}
		return Messages.Wording_Thing;
	}

	private static String box(BoxType type) {
		if (type == null) {
			return Messages.Wording_Plate;
		}
		return switch (type) {
		case RECEPTACLE -> Messages.Wording_Receptacle;
		case SWITCH -> Messages.Wording_Switch;
		case DATA -> Messages.Wording_Data;
		case PANEL -> Messages.Wording_Panel;
		case JUNCTION, UNRECORDED -> Messages.Wording_Plate;
		};
	}

	/** Joins words: {@code a}, {@code a and b}, {@code a, b and c}. */
	static String list(Collection<String> words) {
		List<String> all = new ArrayList<>(words);
		if (all.size() < 2) {
			return all.isEmpty() ? "" : all.get(0); //$NON-NLS-1$
		}
		String last = all.remove(all.size() - 1);
		return NLS.bind(Messages.Wording_And, String.join(", ", all), last); //$NON-NLS-1$
	}

	/** Returns {@code 1 frame} or {@code 3 frames}, for strips {@code 3 fields}. */
	static String parts(int count, RoomTask task) {
		if (task.strips() != null) {
			return NLS.bind(count == 1 ? Messages.Wording_Field : Messages.Wording_Fields, count);
		}
		return NLS.bind(count == 1 ? Messages.Wording_Frame : Messages.Wording_Frames, count);
	}
}
