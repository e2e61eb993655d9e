// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.json;

import static wainscribe.cli.json.JsonValues.array;
import static wainscribe.cli.json.JsonValues.length;
import static wainscribe.cli.json.JsonValues.money;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

import wainscribe.cutting.Bar;
import wainscribe.cutting.CuttingPlan;
import wainscribe.cutting.PieceDemand;
import wainscribe.cutting.PlacedPiece;

/** A cutting plan of files for scripts. */
public final class CuttingJson {

	private static final int CENTS = 2;

	private CuttingJson() {
	}

	/**
	 * Returns {@code {cost, lowerBound, optimal, remainderProved, bars: [{source, label, profile, stock, price, pieces: [{label, length}],
	 * remainder}], unplaced: [{label, profile, length, quantity}]}}.
	 */
	public static JsonObject of(CuttingPlan plan) {
		JsonObject result = new JsonObject();
		result.add("cost", money(plan.cost())); //$NON-NLS-1$
		result.add("lowerBound", bound(plan.lowerBound(), plan.cost())); //$NON-NLS-1$
		result.addProperty("optimal", plan.isCostProved()); //$NON-NLS-1$
		result.addProperty("remainderProved", plan.optimal()); //$NON-NLS-1$
		result.add("bars", array(plan.bars(), CuttingJson::bar)); //$NON-NLS-1$
		result.add("unplaced", array(plan.unplaced(), CuttingJson::demand)); //$NON-NLS-1$
		return result;
	}

	/** A bound is rounded down, so that it stays one. */
	static JsonElement bound(BigDecimal bound, BigDecimal cost) {
		return bound.compareTo(cost) == 0 ? money(cost) : new JsonPrimitive(bound.setScale(CENTS, RoundingMode.FLOOR));
	}

	private static JsonObject bar(Bar bar) {
		JsonObject object = new JsonObject();
		object.addProperty("source", bar.source().name().toLowerCase(Locale.ROOT)); //$NON-NLS-1$
		object.addProperty("label", bar.label()); //$NON-NLS-1$
		object.addProperty("profile", bar.profile()); //$NON-NLS-1$
		object.add("stock", length(bar.length())); //$NON-NLS-1$
		object.add("price", money(bar.price())); //$NON-NLS-1$
		object.add("pieces", array(bar.pieces(), CuttingJson::piece)); //$NON-NLS-1$
		object.add("remainder", length(bar.remainder())); //$NON-NLS-1$
		return object;
	}

	private static JsonObject piece(PlacedPiece piece) {
		JsonObject object = new JsonObject();
		object.addProperty("label", piece.label()); //$NON-NLS-1$
		object.add("length", length(piece.length())); //$NON-NLS-1$
		return object;
	}

	private static JsonObject demand(PieceDemand demand) {
		JsonObject object = new JsonObject();
		object.addProperty("label", demand.label()); //$NON-NLS-1$
		object.addProperty("profile", demand.profile()); //$NON-NLS-1$
		object.add("length", length(demand.length())); //$NON-NLS-1$
		object.addProperty("quantity", demand.quantity()); //$NON-NLS-1$
		return object;
	}
}
