// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

/**
 * Classical shapes, drawn from their geometry for any face width and thickness; the parts keep their proportions.
 * <p>
 * A fillet is a narrow flat, a quirk a small step. Base stands on the floor and crown meets the ceiling, so the edge there
 * is part of the back. Proportions are our own; the words are those of the trade.
 */
@FunctionalInterface
public interface ProfileShape {

	/**
	 * Draws the section.
	 *
	 * @param face      face width in millimetres
	 * @param thickness greatest projection in millimetres
	 * @return the closed section
	 */
	ProfileSection section(double face, double thickness);
}
