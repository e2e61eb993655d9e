// SPDX-License-Identifier: EPL-2.0
package wainscribe.architecture;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every bundle introduces itself the same way, and is neither forgotten by the build nor by a feature. */
class BundleManifestTest {

	static List<Bundle> bundles() {
		return Repository.bundles();
	}

	@ParameterizedTest
	@MethodSource("bundles")
	void manifestIsComplete(Bundle bundle) {
		BundleManifest manifest = bundle.manifest();
		assertAll(bundle.toString(),
			() -> assertEquals(bundle.folder().getFileName().toString(), bundle.name(), "folder and symbolic name"),
			() -> assertEquals(bundle.name(), manifest.value("Automatic-Module-Name").orElse(""), "module name"),
			() -> assertEquals("JavaSE-21", manifest.value("Bundle-RequiredExecutionEnvironment").orElse("")),
			() -> assertEquals("%Bundle-Name", manifest.value("Bundle-Name").orElse("")),
			() -> assertEquals("Wainscribe contributors", bundle.texts().getProperty("Bundle-Vendor")),
			() -> assertTrue(bundle.texts().containsKey("Bundle-Name"), "text of Bundle-Name"));
	}

	@ParameterizedTest
	@MethodSource("bundles")
	void exportedPackageHasCode(Bundle bundle) {
		List<String> empty = bundle.manifest().exportedPackages().stream().filter(name -> List.of("src", "src-gen").stream()
			.noneMatch(source -> Files.isDirectory(bundle.folder().resolve(source).resolve(name.replace('.', '/'))))).toList();
		assertEquals(List.of(), empty, "packages that " + bundle + " exports, but does not have");
	}

	@ParameterizedTest
	@MethodSource("bundles")
	void buildKnowsTheBundle(Bundle bundle) {
		String pom = Repository.text(Repository.ROOT.resolve("pom.xml"));
		assertTrue(pom.contains("<module>bundles/" + bundle + "</module>"), bundle + " is no module of the root pom");
	}

	@ParameterizedTest
	@MethodSource("bundles")
	void exactlyOneFeatureCarriesTheBundle(Bundle bundle) {
		long features = Repository.files(Repository.ROOT.resolve("features"), "feature.xml").stream()
			.filter(file -> !file.toString().contains("target"))
			.filter(file -> Repository.text(file).contains("id=\"" + bundle.name() + "\" version")).count();
		assertEquals(bundle.name().endsWith(".tests") ? 0 : 1, features, "features with " + bundle);
	}
}
