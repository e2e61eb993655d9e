// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui;

import java.util.Locale;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceLocator;

import wainscribe.rules.Severity;

/** The drawings on buttons and in lists, all our own. Their tones stand on light and dark ground alike. */
public enum Icon {

	/** A finding for which something was not built right or is not safe. */
	ERROR,
	/** A finding that needs a reason to stay. */
	WARNING,
	/** A finding that is a guideline. */
	ADVICE,
	/** Nothing was found. */
	IN_ORDER,
	/** A home. */
	HOME,
	/** A home that could not be read. */
	HOME_UNREADABLE,
	/** A room. */
	ROOM,
	/** A profile of a home. */
	PROFILE,
	/** Findings of all rooms. */
	WHOLE_HOME;

	private static final String BUNDLE = "wainscribe.ui"; //$NON-NLS-1$

	/** Returns the drawing. */
	public ImageDescriptor descriptor() {
		String path = "icons/" + name().toLowerCase(Locale.ROOT).replace('_', '-') + ".svg"; //$NON-NLS-1$ //$NON-NLS-2$
		return ResourceLocator.imageDescriptorFromBundle(BUNDLE, path).orElseGet(ImageDescriptor::getMissingImageDescriptor);
	}

	/** Returns the one that stands for a weight of findings. */
	public static Icon of(Severity severity) {
		return switch (severity) {
			case ERROR -> ERROR;
			case WARNING -> WARNING;
			case ADVICE -> ADVICE;
		};
	}
}
