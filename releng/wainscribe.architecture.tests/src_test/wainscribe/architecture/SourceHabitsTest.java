// SPDX-License-Identifier: EPL-2.0
package wainscribe.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

/** What reviewers forget to look at in hand-written Java. */
class SourceHabitsTest {

	private static final String LICENCE = "// SPDX-License-Identifier: EPL-2.0\n";
	private static final int LONGEST_CLASS = 400;
	private static final Pattern TESTS = Pattern.compile("^\\s*@(Test|ParameterizedTest|TestFactory|Property|Example)\\b", Pattern.MULTILINE);
	private static final Pattern SWALLOWED = Pattern.compile("catch \\([^)]*\\) \\{\\s*\\}");
	// written in two parts so that this file does not find itself
	private static final Pattern LEFT_OPEN = Pattern.compile("\\b(TO" + "DO|FIX" + "ME|XX" + "X)\\b");

	@Test
	void thereIsJava() {
		assertFalse(Repository.handWrittenJava().isEmpty(), "no Java was found");
	}

	@Test
	void firstLineIsTheLicence() {
		refuse("files that do not begin with the licence line", text -> !text.startsWith(LICENCE));
	}

	@Test
	void noAuthorTags() {
		refuse("files with author tags", text -> text.contains("* @auth" + "or"));
	}

	@Test
	void nothingIsLeftOpen() {
		refuse("files that leave work open", text -> LEFT_OPEN.matcher(text).find());
	}

	@Test
	void noErrorIsSwallowedOrPrinted() {
		refuse("files that swallow or print errors",
			text -> text.contains(".printStack" + "Trace()") || SWALLOWED.matcher(text).find());
	}

	@Test
	void noClassIsTooLong() {
		refuse("files above " + LONGEST_CLASS + " lines", text -> text.lines().count() > LONGEST_CLASS);
	}

	@Test
	void testsAreFoundByTheRunner() {
		// what measures speed is started by name from releng/benchmark and never decides a test run
		List<Path> lost = Repository.handWrittenJava().stream().filter(file -> !file.toString().endsWith("Test.java"))
			.filter(file -> !file.getParent().endsWith("speed"))
			.filter(file -> TESTS.matcher(Repository.text(file)).find()).toList();
		assertEquals(List.of(), lost, "test classes whose name does not end in Test, so that nobody runs them");
	}

	private static void refuse(String what, Predicate<String> wrong) {
		assertEquals("", Repository.handWrittenJava().stream().filter(file -> wrong.test(Repository.text(file).replace("\r\n", "\n")))
			.map(file -> Repository.ROOT.relativize(file).toString()).collect(Collectors.joining("\n")), what);
	}
}
