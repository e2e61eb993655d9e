// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.util.Objects;

import wainscribe.fabrication.Piece;
import wainscribe.model.Material;

/**
 * What pieces share that can be cut from the same length: one profile in one material.
 *
 * @param profile  as {@link Piece#profile()} writes it
 * @param material what it is made of
 */
public record StockKind(String profile, Material material) {

	/** Refuses nulls. */
	public StockKind {
		Objects.requireNonNull(profile);
		Objects.requireNonNull(material);
	}

	/** Returns what a piece is cut from. */
	public static StockKind of(Piece piece) {
		return new StockKind(piece.profile(), piece.material());
	}

	/** Returns a key that no two kinds share. */
	String key() {
		return profile + '\n' + material.getLiteral();
	}
}
