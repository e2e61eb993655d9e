// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.util.List;

/** One element of a contribution, whether it comes from the running registry or from a plugin.xml. */
interface RuleElement {

	/** Returns an attribute with its text translated, null if it is not there. */
	String attribute(String name);

	/** Returns the children of a name, in order. */
	List<RuleElement> children(String name);

	/** Returns the bundle that contributes it. */
	String contributor();

	/**
	 * Makes the object of the class that the attribute {@code class} names.
	 *
	 * @throws IllegalStateException if that cannot be done; the message names contributor and class
	 */
	RuleCheck create();
}
