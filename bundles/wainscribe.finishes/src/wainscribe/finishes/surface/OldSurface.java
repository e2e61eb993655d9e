// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.surface;

import java.util.Objects;
import java.util.OptionalInt;

import wainscribe.model.Binder;
import wainscribe.model.Finish;
import wainscribe.model.GlossLevel;
import wainscribe.model.Home;
import wainscribe.model.Soundness;
import wainscribe.model.Substrate;

/**
 * What is known of a surface before it is painted.
 *
 * @param gloss gloss level of the old coat
 * @param binder binder of the old coat
 * @param substrate what it lies on
 * @param soundness whether it holds
 * @param textured whether it is a textured coat
 * @param disturbed whether the work will sand, scrape or cut it
 * @param built year in which the home was built, if known
 * @param leadUntil year from which house paint of the country has no lead
 */
public record OldSurface(GlossLevel gloss, Binder binder, Substrate substrate, Soundness soundness, boolean textured, boolean disturbed,
		OptionalInt built, int leadUntil) {

	/** United States: ban of 1978, 16 CFR 1303. */
	private static final int LEAD_US = 1978;
	/** United Kingdom and Ireland: general sale ended in 1992. From memory. */
	private static final int LEAD_UK = 1992;

	/** Refuses nulls. */
	public OldSurface {
		Objects.requireNonNull(gloss);
		Objects.requireNonNull(binder);
		Objects.requireNonNull(substrate);
		Objects.requireNonNull(soundness);
		Objects.requireNonNull(built);
	}

	/** Returns the surface as surveyed. */
	public static OldSurface of(Home home, Finish finish) {
		return new OldSurface(finish.getGloss(), finish.getBinder(), finish.getSubstrate(), finish.getSound(),
				Boolean.TRUE.equals(finish.getTexture()), Boolean.TRUE.equals(finish.getDisturb()), built(home), leadUntil(home));
	}

	/** Returns a surface of which nothing was surveyed. */
	public static OldSurface unknown(Home home) {
		return new OldSurface(GlossLevel.UNRECORDED, Binder.UNRECORDED, Substrate.UNRECORDED, Soundness.UNRECORDED, false, false, built(home),
				leadUntil(home));
	}

	/** Tells whether the home is old enough for lead in its paint; an unknown year counts as old. */
	public boolean mayHoldLead() {
		return built.isEmpty() || built.getAsInt() < leadUntil;
	}

	/** Tells whether the old coat is bound with oil or may be. */
	public boolean mayBeOil() {
		return binder == Binder.ALKYD || binder == Binder.UNKNOWN;
	}

	/** Tells whether the old coat has to be dulled: satin and above. */
	public boolean isGlossy() {
		return gloss.getValue() >= GlossLevel.G4_VALUE;
	}

	private static OptionalInt built(Home home) {
		return home.getBuilt() == null ? OptionalInt.empty() : OptionalInt.of(home.getBuilt());
	}

	private static int leadUntil(Home home) {
		return "UK".equals(home.getCountry()) || "IE".equals(home.getCountry()) ? LEAD_UK : LEAD_US; //$NON-NLS-1$ //$NON-NLS-2$
	}
}
