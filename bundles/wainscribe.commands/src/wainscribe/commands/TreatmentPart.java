// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.List;

import org.eclipse.emf.ecore.EAttribute;

import wainscribe.model.ProfileUse;
import wainscribe.model.WainscribePackage.Literals;

/** Decisions of a brief that belong together and are copied together. */
public enum TreatmentPart {

	/** Which pattern, and how wide its frames are wished. */
	PATTERN(List.of(Literals.BRIEF__PATTERN, Literals.BRIEF__FRAME_WIDTH_MIN, Literals.BRIEF__FRAME_WIDTH_MAX), List.of()),
	/** Where the rail runs and what it is. */
	RAIL(List.of(Literals.BRIEF__RAIL, Literals.BRIEF__RAIL_FACE, Literals.BRIEF__RAIL_THICKNESS),
			List.of(ProfileUse.RAIL, ProfileUse.CAP)),
	/** The gap and the vertical gap. */
	GAPS(List.of(Literals.BRIEF__GAP, Literals.BRIEF__GAP_Y), List.of()),
	/** The moulding of frames and battens. */
	MOULDING(List.of(Literals.BRIEF__FACE, Literals.BRIEF__THICKNESS), List.of(ProfileUse.FRAME, ProfileUse.BATTEN)),
	/** Base, crown and casing. */
	BASE_AND_CROWN(List.of(Literals.BRIEF__BASE, Literals.BRIEF__CROWN),
			List.of(ProfileUse.BASE, ProfileUse.CROWN, ProfileUse.CASING)),
	/** What is bought: material, lengths in stock, nails. */
	STOCK(List.of(Literals.BRIEF__MATERIAL, Literals.BRIEF__STOCK, Literals.BRIEF__NAIL), List.of());

	private final List<EAttribute> decisions;
	private final List<ProfileUse> profiles;

	TreatmentPart(List<EAttribute> decisions, List<ProfileUse> profiles) {
		this.decisions = decisions;
		this.profiles = profiles;
	}

	/** Returns the attributes of the brief. */
	List<EAttribute> decisions() {
		return decisions;
	}

	/** Returns the uses for which a profile is chosen. */
	List<ProfileUse> profiles() {
		return profiles;
	}
}
