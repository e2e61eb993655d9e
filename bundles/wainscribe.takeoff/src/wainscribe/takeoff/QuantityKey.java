// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

/** Keys of what is bought by quantity and is neither a profile nor a paint; prices refer to them. */
public final class QuantityKey {

	/** Gap-filling caulk in cartridges of 300 mL; priced each. */
	public static final String CAULK = "caulk"; //$NON-NLS-1$
	/** Trim adhesive in cartridges of 300 mL; priced each. */
	public static final String ADHESIVE = "adhesive"; //$NON-NLS-1$
	/** Brads for frames; priced each, pack = pieces in a box. */
	public static final String BRADS = "brads"; //$NON-NLS-1$
	/** Finish nails for rail, base and crown; priced each, pack = pieces in a box. */
	public static final String NAILS = "nails"; //$NON-NLS-1$
	/** Wood filler; priced by the litre, pack = litres in a tub. */
	public static final String FILLER = "filler"; //$NON-NLS-1$
	/** Sandpaper; priced each, pack = sheets in a pack. */
	public static final String SANDPAPER = "sandpaper"; //$NON-NLS-1$
	/** Masking tape; priced by the metre, pack = metres on a roll. */
	public static final String TAPE = "tape"; //$NON-NLS-1$
	/** Primer; priced by the litre, pack = litres in a can. */
	public static final String PRIMER = "primer"; //$NON-NLS-1$

	private QuantityKey() {
	}
}
