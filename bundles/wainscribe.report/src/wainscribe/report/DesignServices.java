// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

import java.util.Objects;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IStatus;

import wainscribe.drawing.elevation.ElevationDrawing;
import wainscribe.drawing.export.ExporterCatalogue;
import wainscribe.drawing.export.RegisteredExporters;
import wainscribe.fabrication.CutLists;
import wainscribe.layout.PatternRoomDesigner;
import wainscribe.layout.RoomDesigner;
import wainscribe.layout.pattern.BuiltInPatterns;
import wainscribe.layout.pattern.PatternCatalogue;
import wainscribe.layout.pattern.PatternReader;
import wainscribe.profile.BuiltInProfiles;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.profile.RegisteredProfiles;
import wainscribe.profile.file.HomeProfiles;
import wainscribe.rules.RuleCatalogue;
import wainscribe.rules.RuleEngine;
import wainscribe.takeoff.Takeoffs;

/**
 * The services of a design with everything that was contributed to them; the same for screen and command line. Immutable.
 *
 * @param profiles  trim profiles
 * @param patterns  wall patterns
 * @param designer  lays rooms out
 * @param rules     checks rooms
 * @param exporters writes elevations
 */
public record DesignServices(ProfileCatalogue profiles, PatternCatalogue patterns, RoomDesigner designer, RuleEngine rules,
		ExporterCatalogue exporters) {

	/** Refuses nulls. */
	public DesignServices {
		Objects.requireNonNull(profiles);
		Objects.requireNonNull(patterns);
		Objects.requireNonNull(designer);
		Objects.requireNonNull(rules);
		Objects.requireNonNull(exporters);
	}

	/**
	 * Assembles the services from what bundles contribute.
	 *
	 * @param registry where extensions are declared
	 * @param log      takes one status for each contribution that was left out
	 */
	public static DesignServices from(IExtensionRegistry registry, Consumer<IStatus> log) {
		ProfileCatalogue profiles = new RegisteredProfiles(registry, log).catalogue();
		PatternCatalogue patterns = new PatternReader(registry).read();
		return of(profiles, patterns, new RuleEngine(RuleCatalogue.of(registry)),
				new RegisteredExporters(registry, log).catalogue());
	}

	/** Assembles the services from what bundles contribute; faults go to the log of the platform. */
	public static DesignServices from(IExtensionRegistry registry) {
		return from(registry, ILog.of(DesignServices.class)::log);
	}

	/**
	 * Assembles what comes with the suite without a platform.
	 *
	 * @throws java.io.UncheckedIOException if the rules cannot be read
	 */
	public static DesignServices builtIn() {
		return of(BuiltInProfiles.catalogue(), BuiltInPatterns.catalogue(), new RuleEngine(BuiltInRules.read()), ExporterCatalogue.builtIn());
	}

	private static DesignServices of(ProfileCatalogue profiles, PatternCatalogue patterns, RuleEngine rules,
			ExporterCatalogue exporters) {
		return new DesignServices(profiles, patterns, new PatternRoomDesigner(patterns, profiles), rules, exporters);
	}

	/** Returns the same services with the profiles of a home before those of the suite. */
	public DesignServices with(HomeProfiles own) {
		return of(own.over(profiles), patterns, rules, exporters);
	}

	/** Returns the service that draws elevations. */
	public ElevationDrawing elevation() {
		return new ElevationDrawing(profiles);
	}

	/** Returns the service that derives cut lists. */
	public CutLists cutLists() {
		return new CutLists(profiles);
	}

	/** Returns the service that takes off quantities. */
	public Takeoffs takeoffs() {
		return new Takeoffs(profiles);
	}
}
