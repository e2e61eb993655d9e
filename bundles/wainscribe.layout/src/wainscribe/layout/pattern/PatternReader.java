// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;

/** Reads the contributed patterns from the platform's registry. */
public final class PatternReader {

	/** Id of the extension point. */
	public static final String EXTENSION_POINT = "wainscribe.layout.patterns"; //$NON-NLS-1$

	private static final String PATTERN = "pattern"; //$NON-NLS-1$
	private static final String ID = "id"; //$NON-NLS-1$
	private static final String NAME = "name"; //$NON-NLS-1$
	private static final String DESCRIPTION = "description"; //$NON-NLS-1$
	private static final String CLASS = "class"; //$NON-NLS-1$
	private static final String OWN_PREFIX = "wainscribe."; //$NON-NLS-1$

	private final IExtensionRegistry registry;

	/**
	 * Creates a reader.
	 *
	 * @param registry the platform's registry
	 */
	public PatternReader(IExtensionRegistry registry) {
		this.registry = Objects.requireNonNull(registry);
	}

	/**
	 * Reads the catalogue without creating any contributed class.
	 *
	 * @return the patterns of this project first, then by contributor; contributions without id, name or class are left out
	 */
	public PatternCatalogue read() {
		IConfigurationElement[] elements = registry.getConfigurationElementsFor(EXTENSION_POINT);
		List<Contributed> patterns = Arrays.stream(elements).filter(element -> PATTERN.equals(element.getName()))
				.filter(PatternReader::isComplete).map(Contributed::new)
				.sorted(Comparator.comparing((Contributed pattern) -> !pattern.contributor().startsWith(OWN_PREFIX))
						.thenComparing(Contributed::contributor))
				.toList();
		return new PatternCatalogue(patterns);
	}

	private static boolean isComplete(IConfigurationElement element) {
		return element.getAttribute(ID) != null && element.getAttribute(NAME) != null && element.getAttribute(CLASS) != null;
	}

	private record Contributed(IConfigurationElement element) implements PatternDescriptor {

		@Override
		public String id() {
			return element.getAttribute(ID);
		}

		@Override
		public String name() {
			return element.getAttribute(NAME);
		}

		@Override
		public String description() {
			String text = element.getAttribute(DESCRIPTION);
			return text == null ? "" : text; //$NON-NLS-1$
		}

		String contributor() {
			return element.getContributor().getName();
		}

		@Override
		public WallPattern pattern() {
			try {
				if (element.createExecutableExtension(CLASS) instanceof WallPattern pattern) {
					return pattern;
				}
				throw new PatternException(blame() + "is no " + WallPattern.class.getName(), null); //$NON-NLS-1$
			} catch (CoreException exception) {
				throw new PatternException(blame() + "cannot be created: " + exception.getMessage(), exception); //$NON-NLS-1$
			}
		}

		private String blame() {
			return EXTENSION_POINT + ", contributor " + contributor() + ", pattern " + id() + ": class " //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					+ element.getAttribute(CLASS) + ' ';
		}
	}
}
