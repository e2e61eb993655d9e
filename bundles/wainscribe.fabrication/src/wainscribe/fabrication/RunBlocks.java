// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import org.eclipse.osgi.util.NLS;

import wainscribe.fabrication.Stretch.Halt;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/** Sizes of the blocks that a run stops at: proud of the run by 1/4 in or 6 mm on all sides; common practice. */
record RunBlocks(RunSpec spec, LengthUnit unit) {

	private Length proud() {
		return unit == LengthUnit.INCH ? Length.ofInches(1, 4) : Length.ofMillimetres(6);
	}

	/** Returns the side of a corner block seen from above. */
	Length cornerSide() {
		return spec.section().thickness().plus(proud());
	}

	/** Returns how far a plinth block reaches beyond the casing's outer edge. */
	Length plinthBeyondCasing() {
		return proud();
	}

	/** Returns the block in the corner at the right end of a wall. */
	Block corner(String wall, String next) {
		Length height = spec.section().face().plus(proud());
		return new Block(wall + '/' + spec.kind().word() + "-corner", Block.Use.CORNER, wall, cornerSide(), height, cornerSide(), //$NON-NLS-1$
				NLS.bind(Messages.RunBlocks_Corner, new Object[] { wall, next, spec.kind().word() }));
	}

	/** Returns the block under the casing at an end of a run. */
	Block plinth(String label, String wall, Halt casing, String at) {
		return new Block(label, Block.Use.PLINTH, wall, casing.width().plus(proud()), spec.section().face().plus(proud()),
				spec.section().thickness().plus(proud()), NLS.bind(Messages.RunBlocks_Plinth, wall, at));
	}
}
