// SPDX-License-Identifier: EPL-2.0
package wainscribe.architecture;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.jar.Manifest;

/**
 * The headers of a bundle that say who it is and whom it needs.
 *
 * @param manifest as read
 */
record BundleManifest(Manifest manifest) {

	static BundleManifest read(InputStream in) throws IOException {
		return new BundleManifest(new Manifest(in));
	}

	/** Symbolic name; the empty text if the file is no bundle. */
	String name() {
		return value("Bundle-SymbolicName").map(text -> text.split(";")[0].strip()).orElse("");
	}

	Optional<String> value(String header) {
		return Optional.ofNullable(manifest.getMainAttributes().getValue(header));
	}

	/** Names of the bundles it cannot do without, its host included. */
	List<String> required() {
		List<String> names = new ArrayList<>();
		for (String header : List.of("Require-Bundle", "Fragment-Host")) {
			for (String clause : clauses(value(header).orElse(""))) {
				if (!clause.contains("resolution:=optional") && !clause.contains("resolution:=\"optional\"")) {
					names.add(clause.split(";")[0].strip());
				}
			}
		}
		return names;
	}

	/** Packages it imports by name. */
	List<String> importedPackages() {
		return clauses(value("Import-Package").orElse("")).stream().map(clause -> clause.split(";")[0].strip()).toList();
	}

	/** Packages it offers. */
	List<String> exportedPackages() {
		return clauses(value("Export-Package").orElse("")).stream().map(clause -> clause.split(";")[0].strip()).toList();
	}

	/** Splits at commas that are not inside quotes. */
	private static List<String> clauses(String header) {
		List<String> clauses = new ArrayList<>();
		for (String clause : header.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)")) {
			if (!clause.isBlank()) {
				clauses.add(clause.strip());
			}
		}
		return clauses;
	}
}
