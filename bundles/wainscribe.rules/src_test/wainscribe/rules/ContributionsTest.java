// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import wainscribe.model.WainscribePackage;
import wainscribe.model.length.LengthUnit;

/** What every contributed rule must keep to, read from the plugin.xml that is shipped. */
class ContributionsTest {

	static List<RuleDescriptor> rules() {
		return Site.ENGINE.rules();
	}

	static List<RuleCase> cases() {
		return Stream.of(LayoutRulesTest.cases(), TrimRulesTest.cases(), ServicesRulesTest.cases(), HeatRulesTest.cases(),
				FixturesRulesTest.cases(), PaintRulesTest.cases(), HazardsRulesTest.cases()).flatMap(List::stream).toList();
	}

	@ParameterizedTest
	@MethodSource("rules")
	void ruleIsComplete(RuleDescriptor rule) {
		assertAll(() -> assertTrue(rule.id().matches("[a-z0-9]+(-[a-z0-9]+)*"), rule.id()),
				() -> assertText(rule.name()), () -> assertText(rule.statement()), () -> assertText(rule.source()),
				() -> assertTrue(rule.status() != SourceStatus.COMMON_PRACTICE || rule.source().startsWith("Common practice"),
						rule.id()),
				() -> assertFalse(rule.reads().isEmpty(), rule.id()), () -> assertFalse(rule.profiles().isEmpty(), rule.id()));
	}

	@ParameterizedTest
	@MethodSource("rules")
	void checkCanBeMadeAndKeepsNoState(RuleDescriptor rule) {
		RuleCheck check = rule.check().get();
		assertTrue(check.getClass().getSimpleName().endsWith("Check"), check.getClass().getName());
		for (Class<?> type = check.getClass(); type != Object.class; type = type.getSuperclass()) {
			Arrays.stream(type.getDeclaredFields())
					.forEach(field -> assertTrue(Modifier.isFinal(field.getModifiers()), field.toString()));
		}
	}

	@ParameterizedTest
	@MethodSource("rules")
	void readsWhatTheModelHas(RuleDescriptor rule) {
		for (String read : rule.reads()) {
			String[] parts = read.split("\\.");
			if (!read.equals(RuleDescriptor.LAYOUT)) {
				EClassifier type = WainscribePackage.eINSTANCE.getEClassifier(parts[0]);
				assertTrue(type instanceof EClass, () -> rule.id() + " reads " + read);
				assertTrue(parts.length == 1 || ((EClass) type).getEStructuralFeature(parts[1]) != null, read);
			}
		}
	}

	@ParameterizedTest
	@MethodSource("rules")
	void figuresCanBeRead(RuleDescriptor rule) {
		for (RuleOption option : rule.options()) {
			assertText(option.label());
			for (LengthUnit unit : LengthUnit.values()) {
				String figure = option.defaultIn(unit);
				boolean length = figure.endsWith("mm") || figure.endsWith("\"");
				assertNotNull(length ? RuleOption.asLength(figure) : RuleOption.asNumber(figure));
			}
		}
	}

	@Test
	void eachIdStandsInTheFileOnce() throws IOException {
		String file = Files.readString(Path.of("plugin.xml"));
		Set<String> seen = new HashSet<>();
		int count = 0;
		for (String part : file.split("<rule id=\"")) {
			if (count++ > 0) {
				assertTrue(seen.add(part.substring(0, part.indexOf('"'))), part);
			}
		}
		assertEquals(seen, rules().stream().map(RuleDescriptor::id).collect(Collectors.toSet()));
	}

	@Test
	void eachRuleIsTestedWithAWrongAndAMendedRoom() {
		Set<String> all = rules().stream().map(RuleDescriptor::id).collect(Collectors.toCollection(TreeSet::new));
		Set<String> wrong = cases().stream().filter(each -> each.kind() == FindingKind.BROKEN).map(RuleCase::rule)
				.collect(Collectors.toCollection(TreeSet::new));
		Set<String> mended = cases().stream().filter(each -> each.kind() == null).map(RuleCase::rule)
				.collect(Collectors.toCollection(TreeSet::new));
		assertEquals(all, wrong);
		assertEquals(all, mended);
	}

	@Test
	void eachRuleIsInTheDocument() throws IOException {
		String table = Files.readString(Path.of("doc/rules.md"));
		for (RuleDescriptor rule : rules()) {
			assertTrue(table.contains("| `" + rule.id() + "` | " + rule.severity().word() + " |"), rule.id());
		}
	}

	private static void assertText(String text) {
		assertFalse(text.isBlank() || text.startsWith("%"), text);
	}
}
