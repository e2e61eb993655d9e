// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

/** A pattern as it is offered for choice; its class is created when it is first asked for. */
public interface PatternDescriptor {

	/** Returns the id that briefs refer to. */
	String id();

	/** Returns the name shown. */
	String name();

	/** Returns one sentence that says what the pattern does. */
	String description();

	/**
	 * Returns the pattern.
	 *
	 * @throws PatternException if the contributed class cannot be created; the message names extension point and contributor
	 */
	WallPattern pattern();
}
