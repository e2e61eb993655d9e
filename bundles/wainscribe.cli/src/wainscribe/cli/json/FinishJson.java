// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.json;

import static wainscribe.cli.json.JsonValues.array;

import java.util.List;
import java.util.Optional;

import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;

import wainscribe.finishes.air.MoistAir;
import wainscribe.finishes.coating.CoatingSystem;
import wainscribe.finishes.suitability.RoomAir;
import wainscribe.report.finish.RoomFinish;
import wainscribe.report.finish.ZoneFinish;

/** The finish schedule for scripts. */
public final class FinishJson {

	private static final int DEGREES = 2;
	private static final int AMOUNTS = 3;

	private FinishJson() {
	}

	/** Returns {@code {rooms: [{name, air {temperature, humidity, dewPoint, ...}, zones: [...]}]}}; areas in m2, what is not known is null. */
	public static JsonObject of(List<RoomFinish> rooms) {
		JsonObject object = new JsonObject();
		object.add("rooms", array(rooms, FinishJson::room)); //$NON-NLS-1$
		return object;
	}

	private static JsonObject room(RoomFinish room) {
		JsonObject object = new JsonObject();
		object.addProperty("name", room.room()); //$NON-NLS-1$
		object.add("air", air(room.air())); //$NON-NLS-1$
		object.add("zones", array(room.zones(), FinishJson::zone)); //$NON-NLS-1$
		return object;
	}

	private static JsonObject air(RoomAir air) {
		JsonObject object = new JsonObject();
		object.add("temperature", number(air.air().map(MoistAir::temperature), DEGREES)); //$NON-NLS-1$
		object.add("humidity", number(air.air().map(a -> a.humidity() * 100), DEGREES)); //$NON-NLS-1$
		object.add("dewPoint", number(air.air().map(MoistAir::dewPoint), DEGREES)); //$NON-NLS-1$
		object.add("surface", number(air.surface(), DEGREES)); //$NON-NLS-1$
		object.add("peakHumidity", number(air.day().map(day -> day.peak() * 100), DEGREES)); //$NON-NLS-1$
		object.add("condensationHours", number(air.day().map(day -> day.condensation()), DEGREES)); //$NON-NLS-1$
		object.add("mouldRiskHours", number(air.day().map(day -> day.mouldRisk()), DEGREES)); //$NON-NLS-1$
		object.addProperty("humid", air.isHumid()); //$NON-NLS-1$
		return object;
	}

	private static JsonObject zone(ZoneFinish zone) {
		JsonObject object = new JsonObject();
		object.addProperty("wall", zone.area().wall()); //$NON-NLS-1$
		object.addProperty("zone", zone.area().surface().getLiteral()); //$NON-NLS-1$
		object.add("paint", JsonValues.text(zone.area().paint().getName())); //$NON-NLS-1$
		object.add("system", zone.system().map(CoatingSystem::id).<JsonElement>map(JsonPrimitive::new).orElse(JsonNull.INSTANCE)); //$NON-NLS-1$
		object.add("area", number(zone.area().area().map(Number::doubleValue), AMOUNTS)); //$NON-NLS-1$
		object.addProperty("coats", zone.area().coats()); //$NON-NLS-1$
		object.add("litres", number(zone.area().litres().map(Number::doubleValue), AMOUNTS)); //$NON-NLS-1$
		object.add("preparation", array(zone.preparation(), step -> new JsonPrimitive(step.text()))); //$NON-NLS-1$
		object.add("unsuited", array(zone.unsuited(), JsonPrimitive::new)); //$NON-NLS-1$
		return object;
	}

	private static JsonElement number(Optional<Double> value, int places) {
		return value.map(v -> JsonValues.decimal(v, places)).orElse(JsonNull.INSTANCE);
	}
}
