// SPDX-License-Identifier: EPL-2.0
package wainscribe.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wainscribe.architecture.Descriptor.Attribute;

/** What plugin.xml and fragment.xml name is there: texts, classes, pictures, commands, keys. */
class PluginDescriptorTest {

	/** Attributes that a person reads. */
	private static final Set<String> READ = Set.of("label", "name", "tooltip", "description", "helpText", "mnemonic");
	/** Elements whose {@code name} is for the machine only. */
	private static final Set<String> MACHINE_NAMES = Set.of("separator", "parameter", "property", "groupMarker", "attribute",
		"variable", "arg", "editorContribution");

	static List<Path> descriptors() {
		return Repository.bundles().stream().flatMap(bundle -> bundle.descriptors().stream()).toList();
	}

	@ParameterizedTest
	@MethodSource("descriptors")
	void visibleTextIsAKey(Path file) {
		refuse(file, "visible texts that are no %key", attribute -> READ.contains(attribute.name())
			&& !(attribute.name().equals("name") && MACHINE_NAMES.contains(attribute.element().getNodeName()))
			&& !attribute.value().isBlank() && !attribute.value().startsWith("%"));
	}

	@ParameterizedTest
	@MethodSource("descriptors")
	void keyHasAText(Path file) {
		Properties texts = new Bundle(file.getParent()).texts();
		refuse(file, "keys without a text", attribute -> attribute.value().matches("%\\w.*")
			&& texts.getProperty(attribute.value().substring(1).split(" ")[0], "").isBlank());
	}

	@ParameterizedTest
	@MethodSource("descriptors")
	void namedClassExists(Path file) {
		List<Path> sources = Repository.bundles().stream()
			.flatMap(bundle -> Stream.of("src", "src-gen").map(bundle.folder()::resolve)).toList();
		refuse(file, "classes that do not exist", attribute -> {
			String name = attribute.value().split(":")[0];
			if (!name.matches("wainscribe(\\.[a-z]\\w*)*\\.[A-Z]\\w*(\\$\\w+)?")) {
				return false;
			}
			String path = name.replaceAll("\\$.*", "").replace('.', '/') + ".java";
			return sources.stream().noneMatch(source -> Files.exists(source.resolve(path)));
		});
	}

	@ParameterizedTest
	@MethodSource("descriptors")
	void namedPictureExists(Path file) {
		refuse(file, "pictures that do not exist", attribute -> attribute.value().matches(".*\\.(png|svg|gif)")
			&& !attribute.value().startsWith("platform:") && Stream.of(attribute.value().split(","))
				.anyMatch(picture -> !Files.exists(file.resolveSibling(picture.strip().replaceFirst("^\\$nl\\$/", "")))));
	}

	@ParameterizedTest
	@MethodSource("descriptors")
	void commandOfOursIsDefined(Path file) {
		Set<String> defined = descriptors().stream().flatMap(each -> Descriptor.read(each).elements().stream())
			.filter(element -> element.getNodeName().equals("command") && element.hasAttribute("id"))
			.map(element -> element.getAttribute("id")).collect(Collectors.toSet());
		refuse(file, "commands that nobody defines", attribute -> attribute.name().equals("commandId")
			&& attribute.value().startsWith("wainscribe.") && !defined.contains(attribute.value()));
	}

	@ParameterizedTest
	@MethodSource("descriptors")
	void keyBelongsToOurScheme(Path file) {
		refuse(file, "keys outside the scheme wainscribe.app.keys, which the desktop never activates",
			attribute -> attribute.name().equals("schemeId") && !attribute.value().equals("wainscribe.app.keys"));
	}

	@ParameterizedTest
	@MethodSource("descriptors")
	void menuIsOneOfTheDesktop(Path file) {
		refuse(file, "places in menus that the desktop does not have, see DesktopActionBarAdvisor",
			attribute -> attribute.name().equals("locationURI")
				&& attribute.value().matches("menu:(file|edit|view|window|help|navigate|project)\\b.*"));
	}

	private static void refuse(Path file, String what, Predicate<Attribute> wrong) {
		assertEquals("", Descriptor.read(file).attributes().stream().filter(wrong).map(Attribute::toString)
			.collect(Collectors.joining("\n")), what + " in " + Repository.ROOT.relativize(file));
	}
}
