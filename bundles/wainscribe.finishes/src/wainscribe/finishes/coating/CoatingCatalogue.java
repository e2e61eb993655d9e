// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.coating;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import wainscribe.model.Binder;
import wainscribe.model.GlossLevel;
import wainscribe.model.Paint;

/** The coating systems a designer can choose from. */
public record CoatingCatalogue(List<CoatingSystem> systems) {

	private static final String BUILT_IN = "coatings.csv"; //$NON-NLS-1$

	/** Copies the list. */
	public CoatingCatalogue {
		systems = List.copyOf(systems);
	}

	/** Returns the systems that come with the suite. */
	public static CoatingCatalogue builtIn() {
		try (Reader reader = new InputStreamReader(CoatingCatalogue.class.getResourceAsStream(BUILT_IN), StandardCharsets.UTF_8)) {
			return new CoatingCatalogue(new CoatingReader().read(reader, BUILT_IN));
		} catch (IOException | CoatingException e) {
			throw new IllegalStateException("the built-in coating systems could not be read", e); //$NON-NLS-1$
		}
	}

	/**
	 * Returns the system that a decided paint is nearest to: of its binder (acrylic where none was said), then of its gloss level, then with
	 * the mildew test it has.
	 *
	 * @return empty where the catalogue has none of that binder
	 */
	public Optional<CoatingSystem> nearest(Paint paint) {
		Binder binder = paint.getBinder() == Binder.UNRECORDED || paint.getBinder() == Binder.UNKNOWN ? Binder.ACRYLIC : paint.getBinder();
		int gloss = paint.getGloss() == GlossLevel.UNRECORDED ? GlossLevel.G3_VALUE : paint.getGloss().getValue();
		boolean mildew = Boolean.TRUE.equals(paint.getMildew());
		return systems.stream().filter(system -> system.binder() == binder)
				.min(Comparator.comparingInt((CoatingSystem system) -> Math.abs(system.gloss().getValue() - gloss))
						.thenComparing(system -> system.mildew() != mildew));
	}
}
