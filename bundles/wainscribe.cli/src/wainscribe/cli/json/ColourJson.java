// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.json;

import com.google.gson.JsonArray;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;

import wainscribe.finishes.colour.ColourReading;
import wainscribe.finishes.colour.Lab;

/** The numbers of a colour for scripts; triples as arrays, four decimals. */
public final class ColourJson {

	private static final int PLACES = 4;

	private ColourJson() {
	}

	/** Returns {@code {lab, lch, lrv, deltaE00, contrast, reflectanceDifference, seen {light, lab}, screen {colour, exact, deltaE00}}}. */
	public static JsonObject of(ColourReading reading) {
		JsonObject object = new JsonObject();
		object.add("lab", lab(reading.lab())); //$NON-NLS-1$
		object.add("lch", triple(reading.lab().lightness(), reading.lab().chroma(), reading.lab().hue())); //$NON-NLS-1$
		object.add("lrv", JsonValues.decimal(reading.lightReflectance(), PLACES)); //$NON-NLS-1$
		reading.against().ifPresentOrElse(against -> {
			object.add("deltaE00", JsonValues.decimal(against.difference(), PLACES)); //$NON-NLS-1$
			object.add("contrast", JsonValues.decimal(against.contrast().ratio(), PLACES)); //$NON-NLS-1$
			object.add("reflectanceDifference", JsonValues.decimal(against.contrast().reflectancePoints(), PLACES)); //$NON-NLS-1$
		}, () -> {
			object.add("deltaE00", JsonNull.INSTANCE); //$NON-NLS-1$
			object.add("contrast", JsonNull.INSTANCE); //$NON-NLS-1$
			object.add("reflectanceDifference", JsonNull.INSTANCE); //$NON-NLS-1$
		});
		JsonObject seen = new JsonObject();
		seen.addProperty("light", reading.seen().light().id()); //$NON-NLS-1$
		seen.add("lab", lab(reading.seen().lab())); //$NON-NLS-1$
		object.add("seen", seen); //$NON-NLS-1$
		JsonObject screen = new JsonObject();
		screen.addProperty("colour", reading.screen().code().hex()); //$NON-NLS-1$
		screen.addProperty("exact", reading.screen().exact()); //$NON-NLS-1$
		screen.add("deltaE00", JsonValues.decimal(reading.screen().difference(), PLACES)); //$NON-NLS-1$
		object.add("screen", screen); //$NON-NLS-1$
		return object;
	}

	private static JsonArray lab(Lab lab) {
		return triple(lab.lightness(), lab.a(), lab.b());
	}

	private static JsonArray triple(double first, double second, double third) {
		JsonArray array = new JsonArray();
		array.add(JsonValues.decimal(first, PLACES));
		array.add(JsonValues.decimal(second, PLACES));
		array.add(JsonValues.decimal(third, PLACES));
		return array;
	}
}
