// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;

/**
 * One room put before one rule.
 *
 * @param rule     id of the rule
 * @param what     what is special about the room
 * @param kind     kind of the one finding, null if there must be none
 * @param severity its severity, null if there must be none
 * @param element  the element it must be on
 * @param room     changes the reading room of {@link Site}
 */
record RuleCase(String rule, String what, FindingKind kind, Severity severity, String element, Consumer<Site> room) {

	/** Exactly one finding of the rule's own severity, on the element. */
	static RuleCase wrong(String rule, String what, String element, Consumer<Site> room) {
		return new RuleCase(rule, what, FindingKind.BROKEN, severityOf(rule), element, room);
	}

	/** Exactly one finding of another severity, on the element. */
	static RuleCase wrong(String rule, String what, Severity severity, String element, Consumer<Site> room) {
		return new RuleCase(rule, what, FindingKind.BROKEN, severity, element, room);
	}

	/** Exactly one request to measure, on the element. */
	static RuleCase asks(String rule, String what, String element, Consumer<Site> room) {
		Severity severity = severityOf(rule) == Severity.ERROR ? Severity.WARNING : severityOf(rule);
		return new RuleCase(rule, what, FindingKind.NOT_MEASURED, severity, element, room);
	}

	/** No finding. */
	static RuleCase fine(String rule, String what, Consumer<Site> room) {
		return new RuleCase(rule, what, null, null, "", room);
	}

	static Stream<DynamicTest> tests(List<RuleCase> cases) {
		return cases.stream().map(each -> DynamicTest.dynamicTest(each.rule() + ": " + each.what(), each::run));
	}

	private void run() {
		Site site = new Site();
		room.accept(site);
		List<Finding> found = site.findings(rule);
		assertEquals(kind == null ? 0 : 1, found.size(), () -> "findings: " + found);
		for (Finding finding : found) {
			assertEquals(kind, finding.kind(), finding::message);
			assertEquals(severity, finding.severity(), finding::message);
			assertEquals(element, finding.element(), finding::message);
			assertEquals("Reading room", finding.room());
			assertFalse(finding.source().isBlank());
			assertFalse(finding.message().contains("{") || finding.message().contains("null")
					|| finding.message().contains("missing"), finding::message);
		}
	}

	private static Severity severityOf(String rule) {
		return Site.ENGINE.rules().stream().filter(candidate -> candidate.id().equals(rule)).findFirst().orElseThrow()
				.severity();
	}
}
