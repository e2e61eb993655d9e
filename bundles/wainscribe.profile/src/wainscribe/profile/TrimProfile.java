// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import wainscribe.model.Material;
import wainscribe.model.ProfileUse;
import wainscribe.model.length.Length;
import wainscribe.profile.section.ProfileSection;

/**
 * A moulding as it can be chosen in a brief: its section, what it is for, what it is made of and how it is sold. Immutable.
 *
 * @param id       what briefs, prices and cut lists refer to; unique in a catalogue, never shown first
 * @param name     shown, in trade words
 * @param uses     what it is meant for; at least one
 * @param material what it is made of
 * @param finish   how it comes
 * @param section  its section; kept with its box at the origin, face from the lower to the upper edge
 * @param supply   lengths in which it is sold, the shortest first; empty if not known
 */
public record TrimProfile(String id, String name, Set<ProfileUse> uses, Material material, FinishState finish,
		ProfileSection section, List<SupplyLength> supply) {

	/** Copies the collections and settles the section; refuses nulls, an empty id and a profile without a use. */
	public TrimProfile {
		Objects.requireNonNull(name);
		Objects.requireNonNull(material);
		Objects.requireNonNull(finish);
		uses = Set.copyOf(uses);
		section = section.settled();
		supply = supply.stream().sorted(Comparator.comparing(SupplyLength::length)).toList();
		if (id.isBlank() || uses.isEmpty()) {
			throw new IllegalArgumentException("a profile needs an id and a use"); //$NON-NLS-1$
		}
	}

	/** Creates a profile of which material, finish and supply are not recorded. */
	public TrimProfile(String id, String name, Set<ProfileUse> uses, ProfileSection section) {
		this(id, name, uses, Material.UNRECORDED, FinishState.UNRECORDED, section, List.of());
	}

	/** Returns the profile with another section. */
	public TrimProfile withSection(ProfileSection other) {
		return new TrimProfile(id, name, uses, material, finish, other, supply);
	}

	/** Returns the width of the face on the wall, square to the length. */
	public Length face() {
		return section.box().width();
	}

	/** Returns the greatest projection from the wall. */
	public Length thickness() {
		return section.box().projection();
	}

	/** Returns the developed length of the exposed face in millimetres: what takes paint. */
	public double girthMillimetres() {
		return section.girthMillimetres();
	}

	/** Returns the area of the section in square millimetres: what a metre weighs by. */
	public double areaSquareMillimetres() {
		return section.areaSquareMillimetres();
	}

	/** Tells whether inside corners can be coped; an undercut face can only be mitred. */
	public boolean canBeCoped() {
		return section.canBeCoped();
	}
}
