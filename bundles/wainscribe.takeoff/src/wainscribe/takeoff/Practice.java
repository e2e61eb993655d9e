// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;

/** Rates for quantities and where they come from. All are defaults; the label of the product bought rules. */
final class Practice {

	/** Finish paint on a sealed smooth wall; general painting guides give 8.6 to 9.8 (350 to 400 ft2/gal). */
	static final BigDecimal FINISH_SPREAD = BigDecimal.valueOf(9);
	/** Primer on bare board or wood; general painting guides give 4.9 to 7.4 (200 to 300 ft2/gal). */
	static final BigDecimal PRIMER_SPREAD = BigDecimal.valueOf(6);
	/** Rough walls take 10 to 20 % more; common practice. */
	static final BigDecimal TEXTURE = new BigDecimal("0.85"); //$NON-NLS-1$
	/** Openings below this are not deducted; common practice. */
	static final BigDecimal LEAST_DEDUCTED = BigDecimal.ONE;
	/** Touch-up paint left with each colour, 0.5 to 1 L; common practice. */
	static final BigDecimal SPARE_PAINT = new BigDecimal("0.5"); //$NON-NLS-1$
	/** Coats where the brief says nothing; general painting guides. */
	static final int COATS = 2;

	/** Extra for straight runs; woodwork forum and home-building magazine, 5 to 10 %. */
	static final BigDecimal RUN_WASTE = new BigDecimal("0.10"); //$NON-NLS-1$
	/** Extra for wall frames; home-building magazine, 10 to 20 %. */
	static final BigDecimal FRAME_WASTE = new BigDecimal("0.15"); //$NON-NLS-1$

	/** Section of a tooled 3 mm fillet in square millimetres, leg x leg / 2, and the trade's allowance; common practice. */
	static final BigDecimal CAULK_SECTION = new BigDecimal("4.5"); //$NON-NLS-1$
	static final BigDecimal CAULK_ALLOWANCE = new BigDecimal("1.15"); //$NON-NLS-1$
	/** Cartridge, 10.1 fl oz counted as 300 mL; sealant trade page. */
	static final BigDecimal CARTRIDGE = BigDecimal.valueOf(300);
	/** Metres that a cartridge of adhesive gives as a 5 mm bead; geometry, common practice. */
	static final BigDecimal ADHESIVE_METRES = BigDecimal.valueOf(15);
	/** Two nails at each end of a piece and one each 350 mm, a tenth more; common practice. */
	static final BigDecimal NAILS_AT_ENDS = BigDecimal.valueOf(4);
	static final BigDecimal NAIL_SPACING = new BigDecimal("0.35"); //$NON-NLS-1$
	static final BigDecimal NAIL_ALLOWANCE = new BigDecimal("1.1"); //$NON-NLS-1$
	/** Filler in one nail hole in millilitres; common practice. */
	static final BigDecimal FILLER_A_HOLE = new BigDecimal("0.1"); //$NON-NLS-1$
	/** Metres of trim that one sheet sands in one pass, 10 to 15; common practice. */
	static final BigDecimal SHEET_METRES = BigDecimal.valueOf(12);
	/** Sanding after the primer and between coats; common practice. */
	static final BigDecimal PASSES = BigDecimal.valueOf(2);
	/** Overlaps of masking tape; common practice. */
	static final BigDecimal TAPE_ALLOWANCE = new BigDecimal("1.1"); //$NON-NLS-1$

	private Practice() {
	}
}
