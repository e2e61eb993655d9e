// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.export;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;

/**
 * Reads the exporters from the extension registry. A contributor that fails is left out and reported by extension point
 * and contributor; the others stay.
 */
public final class RegisteredExporters {

	/** Id of the extension point. */
	public static final String EXTENSION_POINT = "wainscribe.drawing.exporters"; //$NON-NLS-1$

	private static final String CLASS = "class"; //$NON-NLS-1$

	private final IExtensionRegistry registry;
	private final Consumer<IStatus> log;

	/**
	 * Creates a reader.
	 *
	 * @param registry where extensions are declared
	 * @param log      takes one status for each contribution that was left out
	 */
	public RegisteredExporters(IExtensionRegistry registry, Consumer<IStatus> log) {
		this.registry = Objects.requireNonNull(registry);
		this.log = Objects.requireNonNull(log);
	}

	/**
	 * Reads the catalogue anew.
	 *
	 * @return all exporters in the order of their contributors; empty if there are none
	 */
	public ExporterCatalogue catalogue() {
		List<ElevationExporter> all = new ArrayList<>();
		Set<String> ids = new HashSet<>();
		for (IConfigurationElement element : registry.getConfigurationElementsFor(EXTENSION_POINT)) {
			Optional<ElevationExporter> exporter = contributed(element);
			if (exporter.isPresent() && !ids.add(exporter.get().id())) {
				report(element, "exporter " + exporter.get().id() + " exists already and was left out", null); //$NON-NLS-1$ //$NON-NLS-2$
			} else {
				exporter.ifPresent(all::add);
			}
		}
		return new ExporterCatalogue(all);
	}

	private Optional<ElevationExporter> contributed(IConfigurationElement element) {
		try {
			if (element.createExecutableExtension(CLASS) instanceof ElevationExporter exporter) {
				return Optional.of(exporter);
			}
			report(element, "class " + element.getAttribute(CLASS) + " is no " + ElevationExporter.class.getName(), null); //$NON-NLS-1$ //$NON-NLS-2$
		} catch (CoreException | RuntimeException | LinkageError e) {
			// Contributed code must not take the others with it.
			report(element, "class " + element.getAttribute(CLASS) + " failed: " + e.getMessage(), e); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return Optional.empty();
	}

	private void report(IConfigurationElement element, String what, Throwable cause) {
		String contributor = element.getContributor().getName();
		log.accept(new Status(IStatus.ERROR, contributor,
				"Extension point " + EXTENSION_POINT + ", contributor " + contributor + ": " + what, cause)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}
}
