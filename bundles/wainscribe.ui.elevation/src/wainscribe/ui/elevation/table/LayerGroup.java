// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import java.util.EnumSet;
import java.util.Set;

import wainscribe.drawing.LayerName;
import wainscribe.ui.elevation.Messages;

/** Layers of the drawing that are shown or hidden together. */
public enum LayerGroup {

	/** Dimension strings. */
	DIMENSIONS(Messages.LayerGroup_Dimensions, EnumSet.of(LayerName.DIMENSION)),
	/** Names and sizes written on things. */
	NAMES(Messages.LayerGroup_Names, EnumSet.of(LayerName.TEXT)),
	/** Labels of the pieces to cut. */
	PIECES(Messages.LayerGroup_Pieces, EnumSet.of(LayerName.PIECE)),
	/** Studs, pipes and cables. */
	IN_THE_WALL(Messages.LayerGroup_InTheWall, EnumSet.of(LayerName.SERVICE)),
	/** Fixtures and plates. */
	FIXTURES(Messages.LayerGroup_Fixtures, EnumSet.of(LayerName.FIXTURE, LayerName.BOX)),
	/** Frames, strips, rail, base and crown. */
	TREATMENT(Messages.LayerGroup_Treatment,
			EnumSet.of(LayerName.FRAME, LayerName.STRIP, LayerName.RAIL, LayerName.BASE, LayerName.CROWN));

	private final String label;
	private final Set<LayerName> layers;

	LayerGroup(String label, Set<LayerName> layers) {
		this.label = label;
		this.layers = layers;
	}

	/** Returns its name for people. */
	public String label() {
		return label;
	}

	/** Returns the layers. */
	public Set<LayerName> layers() {
		return Set.copyOf(layers);
	}
}
