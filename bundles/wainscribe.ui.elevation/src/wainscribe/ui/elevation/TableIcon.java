// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation;

import java.util.Locale;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceLocator;

/** The drawings on the buttons of the drawing table. Their tones stand on light and dark ground alike. */
public enum TableIcon {

	/** The arrow that selects. */
	SELECT,
	/** A new outlet. */
	OUTLET,
	/** A new switch. */
	SWITCH,
	/** A new fixture. */
	FIXTURE,
	/** A marked axis. */
	AXIS,
	/** Existing trim that is taken down. */
	TAKE_DOWN,
	/** The tape. */
	MEASURE,
	/** One wall fills the table. */
	FIT_WALL,
	/** The whole room on the table. */
	FIT_ROOM,
	/** Layers shown and hidden. */
	LAYERS,
	/** Draw larger. */
	LARGER,
	/** Draw smaller. */
	SMALLER,
	/** Frames are locked. */
	LOCK,
	/** The room decides again. */
	RELEASE;

	private static final String BUNDLE = "wainscribe.ui.elevation"; //$NON-NLS-1$

	/** Returns the drawing. */
	public ImageDescriptor descriptor() {
		String path = "icons/" + name().toLowerCase(Locale.ROOT).replace('_', '-') + ".svg"; //$NON-NLS-1$ //$NON-NLS-2$
		return ResourceLocator.imageDescriptorFromBundle(BUNDLE, path).orElseGet(ImageDescriptor::getMissingImageDescriptor);
	}
}
