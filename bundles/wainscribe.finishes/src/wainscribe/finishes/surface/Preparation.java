// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.surface;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.eclipse.osgi.util.NLS;

import wainscribe.finishes.surface.PreparationStep.Kind;
import wainscribe.model.Binder;
import wainscribe.model.Material;
import wainscribe.model.Primer;
import wainscribe.model.Soundness;
import wainscribe.model.Substrate;

/**
 * Says what is done to a surface before a paint, in order, each with its reason. Sources: ASTM D3359 (tape test of a patch), 16 CFR 1303 and the
 * renovation rule 40 CFR 745 (lead); general painting guides for the rest (common practice). The label of the product and local codes rule.
 */
public final class Preparation {

	private static final int DRY = 24;
	private static final int CAULK = 4;
	private static final int PRIMER = 4;

	private final OldSurface old;
	private final Binder binder;
	private final Primer primer;
	private final List<PreparationStep> steps = new ArrayList<>();

	private Preparation(OldSurface old, Binder binder, Primer primer) {
		this.old = old;
		this.binder = binder;
		this.primer = primer;
	}

	/**
	 * Returns the steps on an old surface.
	 *
	 * @param binder of the new paint
	 * @param primer as decided
	 */
	public static List<PreparationStep> of(OldSurface old, Binder binder, Primer primer) {
		Preparation preparation = new Preparation(old, binder, primer);
		preparation.stops();
		preparation.tests();
		preparation.cleaning();
		preparation.sanding();
		preparation.priming();
		preparation.steps.sort(Comparator.comparing(PreparationStep::kind));
		return List.copyOf(preparation.steps);
	}

	/** Returns the steps on new moulding before its finish. */
	public static List<PreparationStep> ofMoulding(Material material) {
		return switch (material) {
		case MDF, MR_MDF -> List.of(new PreparationStep(Kind.SAND, Messages.Preparation_MdfSand, 0),
				new PreparationStep(Kind.PRIME, Messages.Preparation_MdfSeal, PRIMER));
		case PINE, POPLAR -> List.of(new PreparationStep(Kind.FILL, Messages.Preparation_Caulk, CAULK),
				new PreparationStep(Kind.PRIME, Messages.Preparation_Knots, PRIMER));
		case PLASTER -> List.of(new PreparationStep(Kind.PRIME, Messages.Preparation_PlasterSeal, PRIMER));
		case METAL -> List.of(new PreparationStep(Kind.PRIME, Messages.Preparation_MetalPrime, PRIMER));
		default -> List.of(new PreparationStep(Kind.FILL, Messages.Preparation_Caulk, CAULK));
		};
	}

	private void stops() {
		boolean opened = old.disturbed() || old.soundness() == Soundness.NO;
		if (opened && old.mayHoldLead()) {
			add(Kind.STOP, old.built().isPresent() ? NLS.bind(Messages.Preparation_Lead, String.valueOf(old.built().getAsInt()))
					: Messages.Preparation_LeadUnknown, 0);
		}
		if (opened && old.textured() && old.mayHoldLead()) {
			add(Kind.STOP, Messages.Preparation_Asbestos, 0);
		}
	}

	private void tests() {
		if (old.binder() == Binder.UNKNOWN) {
			add(Kind.TEST, Messages.Preparation_Alcohol, 0);
		}
	}

	private void cleaning() {
		add(Kind.CLEAN, Messages.Preparation_Wash, DRY);
		switch (old.soundness()) {
		case NO -> add(Kind.STRIP, Messages.Preparation_Scrape, 0);
		case CHALKING -> add(Kind.STRIP, Messages.Preparation_Chalk, 0);
		default -> {
			// a sound coat, or one not judged yet, stays
		}
		}
		if (old.binder() == Binder.LIMEWASH && binder != Binder.LIMEWASH) {
			add(Kind.STRIP, Messages.Preparation_Limewash, 0);
		}
		add(Kind.FILL, Messages.Preparation_Fill, CAULK);
	}

	private void sanding() {
		if (old.isGlossy()) {
			add(Kind.SAND, NLS.bind(Messages.Preparation_Dull, old.gloss().getLiteral()), 0);
		} else if (old.mayBeOil()) {
			add(Kind.SAND, Messages.Preparation_DullOil, 0);
		}
		if (old.isGlossy() || old.mayBeOil()) {
			add(Kind.TEST_PATCH, Messages.Preparation_Patch, DRY);
		}
	}

	private void priming() {
		if (old.soundness() == Soundness.CHALKING || old.soundness() == Soundness.NO) {
			add(Kind.PRIME, Messages.Preparation_Bind, PRIMER);
		}
		if (old.substrate() == Substrate.TILE || old.substrate() == Substrate.METAL) {
			add(Kind.PRIME, Messages.Preparation_Dense, PRIMER);
		} else if (old.isGlossy() || old.mayBeOil() && binder != Binder.ALKYD || primer == Primer.BONDING) {
			add(Kind.PRIME, Messages.Preparation_Bonding, PRIMER);
		}
	}

	private void add(Kind kind, String text, int hours) {
		steps.add(new PreparationStep(kind, text, hours));
	}
}
