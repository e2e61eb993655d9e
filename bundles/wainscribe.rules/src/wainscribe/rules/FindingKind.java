// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

/** What a finding says about its rule. */
public enum FindingKind {
	/** The rule was measured and is broken. */
	BROKEN,
	/** A fact the rule needs was not measured; the message asks for it. */
	NOT_MEASURED,
	/** The rule itself failed; the message names who contributed it. */
	RULE_FAILED
}
