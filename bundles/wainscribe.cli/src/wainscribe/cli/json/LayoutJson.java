// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.json;

import static wainscribe.cli.json.JsonValues.array;
import static wainscribe.cli.json.JsonValues.length;
import static wainscribe.cli.json.JsonValues.text;

import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;

import java.util.Collection;

import wainscribe.layout.Alternative;
import wainscribe.layout.Member;
import wainscribe.layout.MouldingSection;
import wainscribe.layout.Objective;
import wainscribe.layout.PlainStretch;
import wainscribe.layout.RailBand;
import wainscribe.layout.RoomLayout;
import wainscribe.layout.RunLayout;
import wainscribe.layout.StripOutline;
import wainscribe.layout.WallLayout;
import wainscribe.layout.axes.AxisCheck;
import wainscribe.layout.axes.AxisFit;

/** Layouts as the outside contract of the command {@code layout} writes them. */
public final class LayoutJson {

	private LayoutJson() {
	}

	/** Returns {@code {rooms: [...]}}. */
	public static JsonObject of(Collection<RoomLayout> layouts) {
		JsonObject result = new JsonObject();
		result.add("rooms", array(layouts, LayoutJson::room)); //$NON-NLS-1$
		return result;
	}

	private static JsonObject room(RoomLayout layout) {
		JsonObject room = new JsonObject();
		room.add("name", text(layout.room().getName())); //$NON-NLS-1$
		room.addProperty("pattern", layout.pattern()); //$NON-NLS-1$
		room.addProperty("material", layout.material().getLiteral()); //$NON-NLS-1$
		room.add("gap", length(layout.gap())); //$NON-NLS-1$
		room.add("gapY", length(layout.gapY())); //$NON-NLS-1$
		room.add("rail", rail(layout.railBand())); //$NON-NLS-1$
		room.add("profile", profile(layout.profile())); //$NON-NLS-1$
		room.add("walls", array(layout.walls(), LayoutJson::wall)); //$NON-NLS-1$
		room.add("objective", objective(layout.objective())); //$NON-NLS-1$
		room.addProperty("proved", layout.proved()); //$NON-NLS-1$
		room.add("alternatives", array(layout.alternatives(), LayoutJson::alternative)); //$NON-NLS-1$
		room.add("infeasible", array(layout.infeasible(), LayoutJson::plain)); //$NON-NLS-1$
		room.add("axes", array(AxisCheck.of(layout), LayoutJson::axis)); //$NON-NLS-1$
		return room;
	}

	private static JsonElement rail(RailBand rail) {
		if (rail == null) {
			return JsonNull.INSTANCE;
		}
		JsonObject object = new JsonObject();
		object.add("bottom", length(rail.bottom())); //$NON-NLS-1$
		object.add("top", length(rail.top())); //$NON-NLS-1$
		return object;
	}

	private static JsonObject profile(MouldingSection section) {
		JsonObject object = new JsonObject();
		object.addProperty("id", section.id()); //$NON-NLS-1$
		object.add("face", length(section.face())); //$NON-NLS-1$
		object.add("thickness", length(section.thickness())); //$NON-NLS-1$
		return object;
	}

	private static JsonObject wall(WallLayout wall) {
		JsonObject object = new JsonObject();
		object.add("name", text(wall.wall().getName())); //$NON-NLS-1$
		object.add("runs", array(wall.runs(), LayoutJson::run)); //$NON-NLS-1$
		return object;
	}

	private static JsonObject run(RunLayout run) {
		JsonObject object = new JsonObject();
		object.addProperty("tier", run.tier().word()); //$NON-NLS-1$
		object.add("x0", length(run.x0())); //$NON-NLS-1$
		object.add("x1", length(run.x1())); //$NON-NLS-1$
		object.add("y0", length(run.y0())); //$NON-NLS-1$
		object.add("y1", length(run.y1())); //$NON-NLS-1$
		object.add("frames", array(run.frames(), LayoutJson::member)); //$NON-NLS-1$
		if (!run.strips().isEmpty()) {
			object.add("strips", array(run.strips(), LayoutJson::strip)); //$NON-NLS-1$
		}
		object.addProperty("reason", run.reason()); //$NON-NLS-1$
		return object;
	}

	/** Strips are written as frames are, and say what they are. */
	private static JsonObject strip(StripOutline strip) {
		JsonObject object = member(strip);
		object.addProperty("kind", strip.kind().word()); //$NON-NLS-1$
		return object;
	}

	private static JsonObject member(Member member) {
		JsonObject object = new JsonObject();
		object.addProperty("id", member.id()); //$NON-NLS-1$
		object.add("x", length(member.x())); //$NON-NLS-1$
		object.add("y", length(member.y())); //$NON-NLS-1$
		object.add("width", length(member.width())); //$NON-NLS-1$
		object.add("height", length(member.height())); //$NON-NLS-1$
		if (member.isRaked()) {
			object.add("rise", length(member.rise())); //$NON-NLS-1$
			object.add("riseTop", length(member.riseTop())); //$NON-NLS-1$
		}
		return object;
	}

	private static JsonObject objective(Objective objective) {
		JsonObject object = new JsonObject();
		object.addProperty("plain", objective.plain()); //$NON-NLS-1$
		object.addProperty("splits", objective.splits()); //$NON-NLS-1$
		object.addProperty("anchorsDropped", objective.anchorsDropped()); //$NON-NLS-1$
		object.addProperty("near", objective.near()); //$NON-NLS-1$
		object.addProperty("outOfBand", objective.outOfBand()); //$NON-NLS-1$
		object.addProperty("offModule", objective.offModule()); //$NON-NLS-1$
		object.addProperty("excess", objective.excess()); //$NON-NLS-1$
		object.addProperty("frames", objective.frames()); //$NON-NLS-1$
		object.add("gapShift", length(objective.gapShift())); //$NON-NLS-1$
		return object;
	}

	private static JsonObject alternative(Alternative alternative) {
		JsonObject object = new JsonObject();
		object.addProperty("sentence", alternative.sentence()); //$NON-NLS-1$
		object.add("gap", length(alternative.gap())); //$NON-NLS-1$
		object.add("rail", rail(alternative.rail())); //$NON-NLS-1$
		object.add("objective", objective(alternative.objective())); //$NON-NLS-1$
		object.add("walls", array(alternative.walls(), LayoutJson::wall)); //$NON-NLS-1$
		return object;
	}

	/** {@code off} is above zero where the middle of the frame, or of the space between two, lies right of the axis. */
	private static JsonObject axis(AxisFit fit) {
		JsonObject object = new JsonObject();
		object.add("wall", text(fit.wall().getName())); //$NON-NLS-1$
		object.addProperty("name", fit.axis().name()); //$NON-NLS-1$
		object.add("at", length(fit.axis().at())); //$NON-NLS-1$
		object.addProperty("marked", fit.axis().marked() != null); //$NON-NLS-1$
		object.addProperty("tier", fit.tier().word()); //$NON-NLS-1$
		object.addProperty("on", fit.isFrame() ? "frame" : "gap"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		object.add("frames", array(fit.frames(), JsonPrimitive::new)); //$NON-NLS-1$
		object.add("off", length(fit.off())); //$NON-NLS-1$
		object.addProperty("centred", fit.isCentred()); //$NON-NLS-1$
		return object;
	}

	private static JsonObject plain(PlainStretch stretch) {
		JsonObject object = new JsonObject();
		object.add("wall", text(stretch.wall() == null ? null : stretch.wall().getName())); //$NON-NLS-1$
		object.add("x0", length(stretch.x0())); //$NON-NLS-1$
		object.add("x1", length(stretch.x1())); //$NON-NLS-1$
		object.addProperty("tier", stretch.tier() == null ? "" : stretch.tier().word()); //$NON-NLS-1$ //$NON-NLS-2$
		object.addProperty("reason", stretch.reason()); //$NON-NLS-1$
		object.addProperty("nearest", stretch.nearest()); //$NON-NLS-1$
		return object;
	}
}
