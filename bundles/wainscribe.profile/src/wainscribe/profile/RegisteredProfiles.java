// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;

/**
 * Reads the catalogue from the extension registry.
 * <p>
 * Classes of contributors are created only when the catalogue is read. A contributor that fails, or a profile that cannot
 * be cut, is left out and reported by extension point and contributor; the others stay.
 */
public final class RegisteredProfiles {

	/** Id of the extension point. */
	public static final String EXTENSION_POINT = "wainscribe.profile.profiles"; //$NON-NLS-1$

	private static final String CLASS = "class"; //$NON-NLS-1$

	private final IExtensionRegistry registry;
	private final Consumer<IStatus> log;
	private final SectionCheck check = new SectionCheck();

	/**
	 * Creates a reader.
	 *
	 * @param registry where extensions are declared
	 * @param log      takes one status for each contribution that was left out
	 */
	public RegisteredProfiles(IExtensionRegistry registry, Consumer<IStatus> log) {
		this.registry = Objects.requireNonNull(registry);
		this.log = Objects.requireNonNull(log);
	}

	/**
	 * Reads the catalogue anew.
	 *
	 * @return all sound profiles, in the order of their contributors; empty if there are none
	 */
	public ProfileCatalogue catalogue() {
		List<TrimProfile> all = new ArrayList<>();
		Set<String> ids = new HashSet<>();
		for (IConfigurationElement element : registry.getConfigurationElementsFor(EXTENSION_POINT)) {
			for (TrimProfile profile : contributed(element)) {
				if (!ids.add(profile.id())) {
					report(element, "profile " + profile.id() + " exists already and was left out", null); //$NON-NLS-1$ //$NON-NLS-2$
				} else {
					all.add(profile);
				}
			}
		}
		return new ProfileCatalogue(all);
	}

	private List<TrimProfile> contributed(IConfigurationElement element) {
		try {
			if (element.createExecutableExtension(CLASS) instanceof ProfileSource source) {
				return sound(element, source.profiles());
			}
			report(element, "class " + element.getAttribute(CLASS) + " is no " + ProfileSource.class.getName(), null); //$NON-NLS-1$ //$NON-NLS-2$
		} catch (CoreException | RuntimeException | LinkageError e) {
			// Contributed code must not take the others with it.
			report(element, "class " + element.getAttribute(CLASS) + " failed: " + e.getMessage(), e); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return List.of();
	}

	private List<TrimProfile> sound(IConfigurationElement element, List<TrimProfile> profiles) {
		List<TrimProfile> sound = new ArrayList<>();
		for (TrimProfile profile : profiles) {
			List<String> faults = check.faults(profile);
			if (faults.isEmpty()) {
				sound.add(profile);
			} else {
				report(element, "profile " + profile.id() + " was left out: " + faults.getFirst(), null); //$NON-NLS-1$ //$NON-NLS-2$
			}
		}
		return sound;
	}

	private void report(IConfigurationElement element, String what, Throwable cause) {
		String contributor = element.getContributor().getName();
		log.accept(new Status(IStatus.ERROR, contributor,
				"Extension point " + EXTENSION_POINT + ", contributor " + contributor + ": " + what, cause)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}
}
