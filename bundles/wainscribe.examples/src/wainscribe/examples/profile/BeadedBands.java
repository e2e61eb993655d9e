// SPDX-License-Identifier: EPL-2.0
package wainscribe.examples.profile;

import java.util.List;
import java.util.Set;

import wainscribe.model.ProfileUse;
import wainscribe.model.length.Length;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionPath;
import wainscribe.profile.shape.DrawnShape;
import wainscribe.profile.shape.ProfileShape;
import wainscribe.profile.shape.ShapeParameter;
import wainscribe.profile.shape.ShapeSize;
import wainscribe.profile.shape.ShapeSource;

/**
 * Example of a source of shapes: a flat band with beads along both edges, computed for any width and thickness and for one to
 * four beads an edge. An id such as {@code example-beaded-band-60x12-2} asks for one of them.
 */
public final class BeadedBands implements ShapeSource {

	/** A bead is as wide as a tenth of the band. */
	private static final int BEAD_PERCENT = 10;

	@Override
	public List<ProfileShape> shapes() {
		ShapeParameter beads = new ShapeParameter(Messages.BeadedBands_Beads, 1, 1, 4);
		return List.of(new DrawnShape("example-beaded-band", Messages.BeadedBands_Name, //$NON-NLS-1$
				Set.of(ProfileUse.FRAME, ProfileUse.BATTEN), ShapeSize.ofMillimetres(60, 12), beads, BeadedBands::section));
	}

	/** From the lower edge on the wall up the face; the beads reach the height of the band, and so does its flat. */
	private static ProfileSection section(ShapeSize size) {
		Length bead = size.ofWidth(BEAD_PERCENT);
		Length edge = size.thickness().minus(bead.dividedBy(2));
		SectionPath path = SectionPath.atOrigin().out(edge);
		beads(path, bead, size.number());
		path.out(size.thickness().minus(edge)).along(size.width().minus(bead.times(2L * size.number())));
		beads(path.out(edge.minus(size.thickness())), bead, size.number());
		return path.out(edge.negated()).section();
	}

	private static void beads(SectionPath path, Length width, int count) {
		for (int i = 0; i < count; i++) {
			path.halfRound(width);
		}
	}
}
