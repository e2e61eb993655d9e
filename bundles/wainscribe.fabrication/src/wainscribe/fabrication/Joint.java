// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

/** How the end of a piece meets what is there. */
public enum Joint {
	/** Mitre in the corner of a frame. */
	FRAME_MITRE("mitre"), //$NON-NLS-1$
	/** Mitre with the neighbouring wall's piece in an inside corner. */
	INSIDE_MITRE("inside mitre"), //$NON-NLS-1$
	/** Cut as an inside mitre, then coped over the face of the neighbouring wall's piece. */
	COPE("cope"), //$NON-NLS-1$
	/** Runs into an inside corner and stops at the other wall. */
	BUTT_TO_WALL("butt to wall"), //$NON-NLS-1$
	/** Mitre with the neighbouring wall's piece round an outside corner. */
	OUTSIDE_MITRE("outside mitre"), //$NON-NLS-1$
	/** Meets the neighbouring wall's piece in one plane. */
	IN_LINE("butt in line"), //$NON-NLS-1$
	/** Mitre in one plane where a run changes its pitch, at half the change. */
	RAKE_MITRE("rake mitre"), //$NON-NLS-1$
	/** Stops at the casing of a door or window. */
	BUTT_TO_CASING("butt to casing"), //$NON-NLS-1$
	/** Stops at a fixture, or at the distance it needs. */
	BUTT_TO_FIXTURE("butt to fixture"), //$NON-NLS-1$
	/** Stops at moulding that stays. */
	BUTT_TO_TRIM("butt to trim"), //$NON-NLS-1$
	/** Stops at a corner block. */
	BUTT_TO_BLOCK("butt to corner block"), //$NON-NLS-1$
	/** Stops at a plinth block. */
	BUTT_TO_PLINTH("butt to plinth block"), //$NON-NLS-1$
	/** Glued scarf on a stud, where one length is not enough. */
	SCARF("scarf"), //$NON-NLS-1$
	/** Mitre with a short return that takes the section back to the wall. */
	RETURN("mitred return"), //$NON-NLS-1$
	/** A free end, cut square. */
	SQUARE_END("square end"); //$NON-NLS-1$

	private final String word;

	Joint(String word) {
		this.word = word;
	}

	/** Tells whether both pieces of the joint are cut at the same setting. */
	public boolean isShared() {
		return switch (this) {
			case FRAME_MITRE, INSIDE_MITRE, OUTSIDE_MITRE, RAKE_MITRE, SCARF, RETURN -> true;
			default -> false;
		};
	}

	/** Returns the trade word used in files. */
	public String word() {
		return word;
	}
}
