// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.json;

import static wainscribe.cli.json.JsonValues.array;
import static wainscribe.cli.json.JsonValues.length;

import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;

import java.math.BigDecimal;

import wainscribe.survey.SurveyReport;
import wainscribe.survey.closure.Doubt;
import wainscribe.survey.closure.RoomClosure;

/** What reading a survey showed, as the outside contract of the command {@code survey} writes it. */
public final class SurveyJson {

	private SurveyJson() {
	}

	/** Returns {@code {rooms: [...]}}. */
	public static JsonObject of(SurveyReport report) {
		JsonObject result = new JsonObject();
		result.add("rooms", array(report.rooms(), SurveyJson::room)); //$NON-NLS-1$
		return result;
	}

	private static JsonObject room(RoomClosure closure) {
		JsonObject room = new JsonObject();
		room.addProperty("name", closure.room()); //$NON-NLS-1$
		room.add("closure", number(closure.closure())); //$NON-NLS-1$
		room.add("perimeter", length(closure.perimeter())); //$NON-NLS-1$
		room.add("area", number(closure.area())); //$NON-NLS-1$
		room.addProperty("walls", closure.walls()); //$NON-NLS-1$
		room.add("doubtful", array(closure.doubtful(), SurveyJson::doubt)); //$NON-NLS-1$
		return room;
	}

	private static JsonObject doubt(Doubt doubt) {
		JsonObject object = new JsonObject();
		object.addProperty("wall", doubt.wall()); //$NON-NLS-1$
		object.addProperty("element", doubt.element()); //$NON-NLS-1$
		object.addProperty("message", doubt.message()); //$NON-NLS-1$
		return object;
	}

	private static JsonElement number(BigDecimal value) {
		return value == null ? JsonNull.INSTANCE : new JsonPrimitive(value);
	}
}
