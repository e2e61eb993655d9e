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
import wainscribe.layout.pattern.PatternReader;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.profile.RegisteredProfiles;
import wainscribe.rules.Finding;
import wainscribe.rules.RuleCatalogue;
import wainscribe.rules.RuleEngine;
import wainscribe.rules.RuleSettings;

/** What is derived of a room: its design, and what the rules find in it. Immutable; may be used from any thread. */
final class RoomStudy {

	private static final String NO_PATTERN = "none"; //$NON-NLS-1$

	private final RoomDesigner quick;
	private final RoomDesigner thorough;
	private final RuleEngine rules;

	/**
	 * Creates a study.
	 *
	 * @param quick    answers while something is edited
	 * @param thorough the same, and advises beside
	 * @param rules    checks what came out
	 */
	RoomStudy(RoomDesigner quick, RoomDesigner thorough, RuleEngine rules) {
		this.quick = requireNonNull(quick);
		this.thorough = requireNonNull(thorough);
		this.rules = requireNonNull(rules);
	}

	/** Makes a study with all patterns, profiles and rules that the platform knows. */
	static RoomStudy ofExtensions() {
		IExtensionRegistry registry = Platform.getExtensionRegistry();
		PatternRoomDesigner designer = new PatternRoomDesigner(new PatternReader(registry).read(),
			new RegisteredProfiles(registry, ILog.get()::log).catalogue());
		return new RoomStudy(designer.withoutAdvice(), designer, new RuleEngine(RuleCatalogue.of(registry)));
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
