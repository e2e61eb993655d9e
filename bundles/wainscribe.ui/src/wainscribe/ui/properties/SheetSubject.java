// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.Optional;

import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.ui.views.properties.IPropertySource;

/**
 * What an editor beside the elevations lets the property sheet show. The editor, for when nothing is selected, and what is
 * selected in it answer {@code getAdapter(SheetSubject.class)} with one. Two subjects that are equal are the same thing.
 */
public interface SheetSubject {

	/** Returns what the heading says. */
	String title();

	/** Returns what stands below it. */
	String subtitle();

	/** Returns the history in which edits become steps. */
	CommandStack history();

	/** Makes its properties, in the order shown; what the descriptors of this package take and give is what they say. */
	IPropertySource properties();

	/** Returns the same thing as it is now, or what is shown in its stead; empty to leave what is shown. */
	Optional<SheetSubject> current();
}
