// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile;

import java.util.Locale;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceLocator;

/** The drawings on the buttons of the profile desk. Their tones stand on light and dark ground alike. */
public enum ProfileIcon {

	/** The arrow that selects. */
	SELECT,
	/** Points are drawn. */
	DRAW,
	/** A straight line. */
	LINE,
	/** An arc. */
	ARC,
	/** A curve. */
	CURVE,
	/** What lies against the wall. */
	BACK,
	/** Upside down. */
	MIRROR,
	/** A picture behind the drawing. */
	BACKDROP,
	/** Draw larger. */
	LARGER,
	/** Draw smaller. */
	SMALLER,
	/** The whole section. */
	FIT,
	/** True size. */
	TRUE_SIZE,
	/** A sheet at 1:1. */
	SHEET,
	/** An outline comes from a file. */
	OUTLINE;

	private static final String BUNDLE = "wainscribe.ui.profile"; //$NON-NLS-1$

	/** Returns the drawing. */
	public ImageDescriptor descriptor() {
		String path = "icons/" + name().toLowerCase(Locale.ROOT).replace('_', '-') + ".svg"; //$NON-NLS-1$ //$NON-NLS-2$
		return ResourceLocator.imageDescriptorFromBundle(BUNDLE, path).orElseGet(ImageDescriptor::getMissingImageDescriptor);
	}
}
