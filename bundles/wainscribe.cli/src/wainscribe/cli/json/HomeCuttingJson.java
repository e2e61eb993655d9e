// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.json;

import static wainscribe.cli.json.JsonValues.array;
import static wainscribe.cli.json.JsonValues.length;
import static wainscribe.cli.json.JsonValues.money;
import static wainscribe.cli.json.JsonValues.text;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import java.util.List;
import java.util.Locale;

import wainscribe.fabrication.CutList;
import wainscribe.fabrication.Piece;
import wainscribe.fabrication.PieceEnd;
import wainscribe.model.Home;
import wainscribe.model.StoredOffcut;
import wainscribe.takeoff.cutting.HomePlan;
import wainscribe.takeoff.cutting.PlannedBar;
import wainscribe.takeoff.cutting.PlannedPiece;
import wainscribe.takeoff.cutting.StockKind;

/** Cut list and cutting plan of a home for scripts. */
public final class HomeCuttingJson {

	private HomeCuttingJson() {
	}

	/**
	 * Returns {@code {cost, lowerBound, optimal, kerf, trim, shortestOffcut, bars[], accepted[], unplaced[], unpriced[], offcuts[],
	 * pieces[]}}; the price of a bar is null where none is known, and not in the cost.
	 */
	public static JsonObject of(Home home, List<CutList> lists, HomePlan plan) {
		JsonObject result = new JsonObject();
		result.add("cost", money(plan.cost())); //$NON-NLS-1$
		result.add("lowerBound", CuttingJson.bound(plan.lowerBound(), plan.cost())); //$NON-NLS-1$
		result.addProperty("optimal", plan.isCostProved() || plan.optimal()); //$NON-NLS-1$
		result.addProperty("remainderProved", plan.optimal()); //$NON-NLS-1$
		result.add("kerf", length(plan.decisions().kerf())); //$NON-NLS-1$
		result.add("trim", length(plan.decisions().endTrim())); //$NON-NLS-1$
		result.add("shortestOffcut", length(plan.decisions().shortestOffcut())); //$NON-NLS-1$
		result.add("bars", array(plan.bars(), HomeCuttingJson::bar)); //$NON-NLS-1$
		result.add("accepted", array(plan.accepted(), HomeCuttingJson::bar)); //$NON-NLS-1$
		result.add("unplaced", array(plan.unplaced(), HomeCuttingJson::unplaced)); //$NON-NLS-1$
		result.add("unpriced", array(plan.unpriced(), HomeCuttingJson::kind)); //$NON-NLS-1$
		result.add("offcuts", array(home.getOffcuts(), HomeCuttingJson::offcut)); //$NON-NLS-1$
		JsonArray pieces = new JsonArray();
		lists.forEach(list -> list.pieces().forEach(piece -> pieces.add(piece(list.room(), piece))));
		result.add("pieces", pieces); //$NON-NLS-1$
		return result;
	}

	private static JsonObject bar(PlannedBar bar) {
		JsonObject object = new JsonObject();
		object.addProperty("source", bar.source().name().toLowerCase(Locale.ROOT)); //$NON-NLS-1$
		object.addProperty("label", bar.label()); //$NON-NLS-1$
		object.addProperty("profile", bar.kind().profile()); //$NON-NLS-1$
		object.addProperty("material", bar.kind().material().getLiteral()); //$NON-NLS-1$
		object.add("stock", length(bar.length())); //$NON-NLS-1$
		object.add("price", money(bar.price())); //$NON-NLS-1$
		object.add("pieces", array(bar.pieces(), HomeCuttingJson::placed)); //$NON-NLS-1$
		object.add("remainder", length(bar.remainder())); //$NON-NLS-1$
		return object;
	}

	private static JsonObject placed(PlannedPiece piece) {
		JsonObject object = new JsonObject();
		object.addProperty("room", piece.room()); //$NON-NLS-1$
		object.addProperty("label", piece.label()); //$NON-NLS-1$
		object.add("length", length(piece.length())); //$NON-NLS-1$
		return object;
	}

	private static JsonObject unplaced(PlannedPiece piece) {
		JsonObject object = placed(piece);
		piece.piece().map(StockKind::of).ifPresent(kind -> {
			object.addProperty("profile", kind.profile()); //$NON-NLS-1$
			object.addProperty("material", kind.material().getLiteral()); //$NON-NLS-1$
		});
		return object;
	}

	private static JsonObject kind(StockKind kind) {
		JsonObject object = new JsonObject();
		object.addProperty("profile", kind.profile()); //$NON-NLS-1$
		object.addProperty("material", kind.material().getLiteral()); //$NON-NLS-1$
		return object;
	}

	private static JsonObject offcut(StoredOffcut offcut) {
		JsonObject object = new JsonObject();
		object.add("label", text(offcut.getName())); //$NON-NLS-1$
		object.add("profile", text(offcut.getProfile())); //$NON-NLS-1$
		object.add("material", text(offcut.getMaterial() == null ? null : offcut.getMaterial().getLiteral())); //$NON-NLS-1$
		object.add("length", length(offcut.getLength())); //$NON-NLS-1$
		object.add("origin", text(offcut.getOrigin())); //$NON-NLS-1$
		return object;
	}

	private static JsonObject piece(String room, Piece piece) {
		JsonObject object = new JsonObject();
		object.addProperty("room", room); //$NON-NLS-1$
		object.addProperty("label", piece.label()); //$NON-NLS-1$
		object.addProperty("profile", piece.profile()); //$NON-NLS-1$
		object.addProperty("material", piece.material().getLiteral()); //$NON-NLS-1$
		object.add("length", length(piece.longPoint())); //$NON-NLS-1$
		object.add("shortPoint", length(piece.shortPoint())); //$NON-NLS-1$
		object.add("start", end(piece.start())); //$NON-NLS-1$
		object.add("end", end(piece.end())); //$NON-NLS-1$
		object.addProperty("wall", piece.wall()); //$NON-NLS-1$
		object.addProperty("where", piece.where()); //$NON-NLS-1$
		return object;
	}

	private static JsonObject end(PieceEnd end) {
		JsonObject object = new JsonObject();
		object.addProperty("joint", end.joint().word()); //$NON-NLS-1$
		object.addProperty("turn", end.turn()); //$NON-NLS-1$
		object.addProperty("tilt", end.tilt()); //$NON-NLS-1$
		object.addProperty("longSide", end.longSide().word()); //$NON-NLS-1$
		return object;
	}
}
