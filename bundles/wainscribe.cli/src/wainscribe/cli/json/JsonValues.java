// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.json;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonPrimitive;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.function.Function;

import wainscribe.model.length.Length;

/** Values as the outside contract writes them. */
final class JsonValues {

	private static final int MONEY_PLACES = 2;

	private JsonValues() {
	}

	/** Returns exact millimetres, or null. */
	static JsonElement length(Length length) {
		return length == null ? JsonNull.INSTANCE : new JsonPrimitive(length.toMillimetres());
	}

	/** Returns money with two decimals, or null. */
	static JsonElement money(BigDecimal amount) {
		return amount == null ? JsonNull.INSTANCE : new JsonPrimitive(amount.setScale(MONEY_PLACES, RoundingMode.HALF_UP));
	}

	/** Returns a number with at most the given decimals, without trailing zeros. */
	static JsonElement decimal(double value, int places) {
		BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).stripTrailingZeros();
		return new JsonPrimitive(rounded.scale() < 0 ? rounded.setScale(0) : rounded);
	}

	/** Returns an array. */
	static <T> JsonArray array(Collection<T> values, Function<T, ? extends JsonElement> conversion) {
		JsonArray array = new JsonArray();
		values.forEach(value -> array.add(conversion.apply(value)));
		return array;
	}

	/** Returns text, empty instead of null. */
	static JsonElement text(String value) {
		return new JsonPrimitive(value == null ? "" : value); //$NON-NLS-1$
	}
}
