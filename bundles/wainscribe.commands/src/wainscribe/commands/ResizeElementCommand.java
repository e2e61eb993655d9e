// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.Objects;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Box;
import wainscribe.model.Placed;
import wainscribe.model.WainscribePackage;
import wainscribe.model.length.Length;
import wainscribe.model.outline.Outline;

/** Gives something on a wall another outline. A plate resized by hand counts as measured, no longer as so many gangs. */
public final class ResizeElementCommand extends EditCommand {

	private final Placed element;
	private final Outline outline;

	/**
	 * Creates a command.
	 *
	 * @param element something on a wall
	 * @param outline its new outline; refused when it has no width or no height
	 */
	public ResizeElementCommand(Placed element, Outline outline) {
		super(NLS.bind(Messages.ResizeElementCommand_Label, ElementWords.of(element)), element);
		this.element = element;
		this.outline = Objects.requireNonNull(outline);
	}

	@Override
	protected boolean isEffective() {
		return outline.width().signum() > 0 && outline.height().signum() > 0
				&& !(outline.x0().equals(element.getX()) && outline.y0().equals(element.getY())
						&& outline.width().equals(element.getWidth()) && outline.height().equals(element.getHeight()));
	}

	@Override
	protected void perform(ChangeLog changes) {
		if (element instanceof Box box && !hasSize(outline.width(), outline.height())) {
			changes.set(box, WainscribePackage.Literals.BOX__GANG, null);
		}
		changes.set(element, WainscribePackage.Literals.PLACED__X, outline.x0());
		changes.set(element, WainscribePackage.Literals.PLACED__Y, outline.y0());
		changes.set(element, WainscribePackage.Literals.PLACED__WIDTH, outline.width());
		changes.set(element, WainscribePackage.Literals.PLACED__HEIGHT, outline.height());
	}

	private boolean hasSize(Length width, Length height) {
		return width.equals(element.getWidth()) && height.equals(element.getHeight());
	}
}
