// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;

import wainscribe.model.length.LengthUnit;
import wainscribe.profile.section.SectionCheck;
import wainscribe.profile.shape.ProfileShape;
import wainscribe.profile.shape.ShapeRequest;
import wainscribe.profile.shape.ShapeSize;
import wainscribe.profile.shape.ShapeSource;

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
	private static final String PROFILES = "profiles"; //$NON-NLS-1$

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
	 * @return all sound profiles and shapes, in the order of their contributors; empty if there are none
	 */
	public ProfileCatalogue catalogue() {
		Map<String, TrimProfile> profiles = new LinkedHashMap<>();
		Map<String, ProfileShape> shapes = new LinkedHashMap<>();
		for (IConfigurationElement element : registry.getConfigurationElementsFor(EXTENSION_POINT)) {
			if (PROFILES.equals(element.getName())) {
				contributed(element, ProfileSource.class, ProfileSource::profiles).stream()
						.filter(profile -> fits(element, "profile " + profile.id(), check.firstFault(profile.section()))) //$NON-NLS-1$
						.forEach(profile -> add(element, profiles, profile.id(), profile));
			} else {
				contributed(element, ShapeSource.class, ShapeSource::shapes).stream()
						.filter(shape -> fits(element, "shape " + shape.id(), usualFault(shape))) //$NON-NLS-1$
						.forEach(shape -> add(element, shapes, shape.id(), shape));
			}
		}
		return new ProfileCatalogue(List.copyOf(profiles.values()), List.copyOf(shapes.values()));
	}

	/** Of two with one id the first stays, so what is chosen does not change when a bundle is added. */
	private <T> void add(IConfigurationElement element, Map<String, T> known, String id, T contribution) {
		if (known.putIfAbsent(id, contribution) != null) {
			report(element, (contribution instanceof TrimProfile ? "profile " : "shape ") + id + " exists already and was left out", //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					null);
		}
	}

	private <S, T> List<T> contributed(IConfigurationElement element, Class<S> type, Function<S, List<T>> ask) {
		try {
			Object source = element.createExecutableExtension(CLASS);
			if (type.isInstance(source)) {
				return List.copyOf(ask.apply(type.cast(source)));
			}
			report(element, "class " + element.getAttribute(CLASS) + " is no " + type.getName(), null); //$NON-NLS-1$ //$NON-NLS-2$
		} catch (CoreException | RuntimeException | LinkageError e) {
			// Contributed code must not take the others with it.
			report(element, "class " + element.getAttribute(CLASS) + " failed: " + e.getMessage(), e); //$NON-NLS-1$ //$NON-NLS-2$
		}
		return List.of();
	}

	/** A shape that cannot be drawn in its usual size cannot be drawn at all. */
	private static Optional<String> usualFault(ProfileShape shape) {
		ShapeSize usual = shape.usual();
		return new ShapeRequest(shape.id(), usual.width(), usual.thickness(), LengthUnit.MILLIMETRE, null).draw(shape).fault();
	}

	private boolean fits(IConfigurationElement element, String what, Optional<String> fault) {
		fault.ifPresent(why -> report(element, what + " was left out: " + why, null)); //$NON-NLS-1$
		return fault.isEmpty();
	}

	private void report(IConfigurationElement element, String what, Throwable cause) {
		String contributor = element.getContributor().getName();
		log.accept(new Status(IStatus.ERROR, contributor,
				"Extension point " + EXTENSION_POINT + ", contributor " + contributor + ": " + what, cause)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}
}
