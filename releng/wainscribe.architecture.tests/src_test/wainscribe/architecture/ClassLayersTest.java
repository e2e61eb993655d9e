// SPDX-License-Identifier: EPL-2.0
package wainscribe.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the manifests promise holds for the compiled classes too. */
class ClassLayersTest {

	private static final String[] WINDOWS = { "org.eclipse.swt..", "org.eclipse.jface..", "org.eclipse.draw2d..",
		"org.eclipse.gef..", "org.eclipse.ui..", "org.eclipse.e4.ui.." };

	static List<Bundle> withCode() {
		return Repository.bundles().stream()
			.filter(bundle -> !Layers.standsApart(bundle.name()) && !Repository.files(bundle.folder().resolve("src"), ".java").isEmpty())
			.toList();
	}

	static List<Bundle> domainWithCode() {
		return withCode().stream().filter(Bundle::isDomain).toList();
	}

	@ParameterizedTest
	@MethodSource("domainWithCode")
	void domainClassUsesNoWindowToolkit(Bundle bundle) {
		noClasses().should().dependOnClassesThat().resideInAnyPackage(WINDOWS).check(classes(bundle));
	}

	@ParameterizedTest
	@MethodSource("withCode")
	void classUsesOnlyBundlesBelow(Bundle bundle) {
		Map<String, Integer> heights = Layers.heights();
		int own = heights.get(bundle.name());
		noClasses().should().dependOnClassesThat(new DescribedPredicate<JavaClass>("belong to a bundle that does not stand below") {
			@Override
			public boolean test(JavaClass used) {
				String owner = owner(used.getPackageName(), heights);
				return !owner.equals(bundle.name()) && !owner.isEmpty() && heights.get(owner) >= own;
			}
		}).check(classes(bundle));
	}

	/** The bundle whose name is the longest beginning of the package's name; empty if it is not ours. */
	private static String owner(String packageName, Map<String, Integer> heights) {
		return heights.keySet().stream()
			.filter(name -> packageName.equals(name) || packageName.startsWith(name + '.'))
			.reduce("", (a, b) -> a.length() > b.length() ? a : b);
	}

	private static JavaClasses classes(Bundle bundle) {
		Path folder = bundle.classes();
		assertFalse(Repository.files(folder, ".class").isEmpty(), "build " + bundle + " first: no classes in " + folder);
		return new ClassFileImporter().importPath(folder);
	}
}
