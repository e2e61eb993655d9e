// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.function.BooleanSupplier;

import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;

import wainscribe.layout.EffectiveBrief;
import wainscribe.layout.PatternRoomDesigner;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.RoomDesigner;
import wainscribe.layout.pattern.PatternCatalogue;
import wainscribe.layout.pattern.PatternReader;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.profile.RegisteredProfiles;
import wainscribe.profile.TrimProfile;
import wainscribe.rules.Finding;
import wainscribe.rules.RuleCatalogue;
import wainscribe.rules.RuleEngine;
import wainscribe.rules.RuleSettings;

/** What is derived of a room: its design, and what the rules find in it. Immutable; may be used from any thread. */
final class RoomStudy {

	private static final String NO_PATTERN = "none"; //$NON-NLS-1$

	private final PatternCatalogue patterns;
	private final ProfileCatalogue profiles;
	private final RoomDesigner quick;
	private final RoomDesigner thorough;
	private final RuleEngine rules;

	/**
	 * Creates a study.
	 *
	 * @param patterns the wall patterns
	 * @param profiles the profiles
	 * @param rules    checks what came out
	 */
	RoomStudy(PatternCatalogue patterns, ProfileCatalogue profiles, RuleEngine rules) {
		this.patterns = requireNonNull(patterns);
		this.profiles = requireNonNull(profiles);
		this.rules = requireNonNull(rules);
		PatternRoomDesigner designer = new PatternRoomDesigner(patterns, profiles);
		quick = designer.withoutAdvice();
		thorough = designer;
	}

	/** Makes a study with all patterns, profiles and rules that the platform knows. */
	static RoomStudy ofExtensions() {
		IExtensionRegistry registry = Platform.getExtensionRegistry();
		return new RoomStudy(new PatternReader(registry).read(), new RegisteredProfiles(registry, ILog.get()::log).catalogue(),
			new RuleEngine(RuleCatalogue.of(registry)));
	}

	/** Returns the profiles that can be chosen. */
	ProfileCatalogue profiles() {
		return profiles;
	}

	/** Returns the designer that answers while something is edited. */
	RoomDesigner designer() {
		return quick;
	}

	/** Makes a study that knows more profiles. */
	RoomStudy with(List<TrimProfile> more) {
		return new RoomStudy(patterns, profiles.with(more), rules);
	}

	/** Resolves the decisions that hold for a room. */
	EffectiveBrief brief(Home home, Room room) {
		return quick.brief(home, room);
	}

	/** Lays a room out; one that asks for a pattern nobody brings stays without frames. */
	RoomDesign design(Home home, Room room) {
		return design(quick, home, room);
	}

	/** Lays a room out and looks for alternatives and for the nearest request where something cannot be done. */
	RoomDesign adviseOn(Home home, Room room) {
		return design(thorough, home, room);
	}

	private static RoomDesign design(RoomDesigner designer, Home home, Room room) {
		EffectiveBrief brief = designer.brief(home, room);
		try {
			return designer.design(home, room, brief);
		} catch (IllegalArgumentException e) {
			ILog.get().warn(e.getLocalizedMessage(), e);
			return designer.design(home, room, brief.withPattern(NO_PATTERN));
		}
	}

	/**
	 * Checks a room.
	 *
	 * @throws org.eclipse.core.runtime.OperationCanceledException if cancelled
	 */
	List<Finding> findings(RoomDesign design, BooleanSupplier cancelled) {
		return rules.check(design, RuleSettings.DEFAULT, cancelled);
	}
}
