// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

/**
 * Tests one rule on one room. The rule's data stand in the extension that names the class; the check holds only the test.
 * <p>
 * Implementations are named for the thing found wrong, have a public constructor without parameters and keep no state: one
 * object may serve many rooms and threads at once. A check measures the design itself and does not rely on the layout
 * having kept a distance. It reports at most one finding on an element, the worst.
 */
@FunctionalInterface
public interface RuleCheck {

	/**
	 * Tests the room of the context and reports what is wrong.
	 *
	 * @param context the room, the rule's options and the place to report to
	 * @throws RuntimeException any; the engine reports it as one finding and goes on with the other rules
	 */
	void check(RuleContext context);
}
