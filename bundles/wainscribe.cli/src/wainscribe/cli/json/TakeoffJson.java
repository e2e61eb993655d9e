// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.json;

import static wainscribe.cli.json.JsonValues.array;
import static wainscribe.cli.json.JsonValues.money;

import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;

import java.math.BigDecimal;

import wainscribe.takeoff.HomeTakeoff;
import wainscribe.takeoff.PackCount;
import wainscribe.takeoff.RoomTakeoff;
import wainscribe.takeoff.TakeoffLine;
import wainscribe.takeoff.TakeoffTotals;

/** Quantities and budget for scripts. */
public final class TakeoffJson {

	private TakeoffJson() {
	}

	/** Returns {@code {home, currency, lines, totals, rooms: [{name, lines, totals}]}}. */
	public static JsonObject of(HomeTakeoff takeoff) {
		JsonObject result = new JsonObject();
		result.addProperty("home", takeoff.home()); //$NON-NLS-1$
		result.addProperty("currency", takeoff.currency()); //$NON-NLS-1$
		result.add("lines", array(takeoff.lines(), TakeoffJson::line)); //$NON-NLS-1$
		result.add("totals", totals(takeoff.totals())); //$NON-NLS-1$
		result.add("rooms", array(takeoff.rooms(), TakeoffJson::room)); //$NON-NLS-1$
		return result;
	}

	private static JsonObject room(RoomTakeoff room) {
		JsonObject object = new JsonObject();
		object.addProperty("name", room.room()); //$NON-NLS-1$
		object.add("lines", array(room.lines(), TakeoffJson::line)); //$NON-NLS-1$
		object.add("totals", totals(room.totals())); //$NON-NLS-1$
		return object;
	}

	private static JsonObject line(TakeoffLine line) {
		JsonObject object = new JsonObject();
		object.addProperty("key", line.key()); //$NON-NLS-1$
		object.addProperty("group", line.group()); //$NON-NLS-1$
		object.addProperty("item", line.item()); //$NON-NLS-1$
		object.add("quantity", number(line.quantity())); //$NON-NLS-1$
		object.addProperty("unit", line.unit()); //$NON-NLS-1$
		object.addProperty("formula", line.formula()); //$NON-NLS-1$
		object.addProperty("source", line.source()); //$NON-NLS-1$
		object.add("packs", array(line.packs(), TakeoffJson::packs)); //$NON-NLS-1$
		object.add("total", money(line.total())); //$NON-NLS-1$
		return object;
	}

	private static JsonObject packs(PackCount packs) {
		JsonObject object = new JsonObject();
		object.addProperty("count", packs.count()); //$NON-NLS-1$
		object.add("size", number(packs.size())); //$NON-NLS-1$
		object.addProperty("unit", packs.unit()); //$NON-NLS-1$
		object.add("price", money(packs.unitPrice())); //$NON-NLS-1$
		return object;
	}

	private static JsonObject totals(TakeoffTotals totals) {
		JsonObject object = new JsonObject();
		object.add("net", money(totals.net())); //$NON-NLS-1$
		object.add("taxPercent", number(totals.taxPercent())); //$NON-NLS-1$
		object.add("tax", money(totals.tax())); //$NON-NLS-1$
		object.add("gross", money(totals.gross())); //$NON-NLS-1$
		object.addProperty("unpriced", totals.unpriced()); //$NON-NLS-1$
		return object;
	}

	private static JsonElement number(BigDecimal value) {
		return value == null ? JsonNull.INSTANCE : new JsonPrimitive(new BigDecimal(value.toPlainString()));
	}
}
