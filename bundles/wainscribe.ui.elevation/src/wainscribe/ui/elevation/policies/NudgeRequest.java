// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.policies;

import java.util.Objects;

import org.eclipse.gef.Request;

import wainscribe.model.length.Length;

/** Asks a selected thing to move by an exact length: what the arrow keys do. */
public final class NudgeRequest extends Request {

	/** Type of the request. */
	public static final Object TYPE = "wainscribe.nudge"; //$NON-NLS-1$

	private final Length dx;
	private final Length dy;

	/**
	 * Creates a request.
	 *
	 * @param dx to the right
	 * @param dy up
	 */
	public NudgeRequest(Length dx, Length dy) {
		super(TYPE);
		this.dx = Objects.requireNonNull(dx);
		this.dy = Objects.requireNonNull(dy);
	}

	/** Returns how far to the right. */
	public Length dx() {
		return dx;
	}

	/** Returns how far up. */
	public Length dy() {
		return dy;
	}
}
