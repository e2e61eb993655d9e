// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.finish;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import wainscribe.finishes.coating.CoatingSystem;
import wainscribe.finishes.surface.PreparationStep;
import wainscribe.takeoff.PaintArea;

/**
 * One coat on one wall, or on all trim, the ceiling or the floor.
 *
 * @param area what it covers
 * @param system the kind of paint nearest to the one decided; empty where the catalogue has none of its binder
 * @param preparation what is done first, in order
 * @param unsuited reasons against it, none where it suits
 */
public record ZoneFinish(PaintArea area, Optional<CoatingSystem> system, List<PreparationStep> preparation, List<String> unsuited) {

	/** Copies the lists and refuses nulls. */
	public ZoneFinish {
		Objects.requireNonNull(area);
		Objects.requireNonNull(system);
		preparation = List.copyOf(preparation);
		unsuited = List.copyOf(unsuited);
	}
}
