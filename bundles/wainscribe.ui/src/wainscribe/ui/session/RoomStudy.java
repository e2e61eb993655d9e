// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.function.BooleanSupplier;

import org.eclipse.core.runtime.ILog;

import wainscribe.layout.EffectiveBrief;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.RoomDesigner;
import wainscribe.model.Home;
import wainscribe.model.Room;
import wainscribe.rules.Finding;
import wainscribe.rules.RuleEngine;
import wainscribe.rules.RuleSettings;

/** What is derived of a room: its design, and what the rules find in it. Immutable; may be used from any thread. */
final class RoomStudy {

	private static final String NO_PATTERN = "none"; //$NON-NLS-1$

	private final RoomDesigner designer;
	private final RuleEngine rules;

	RoomStudy(RoomDesigner designer, RuleEngine rules) {
		this.designer = requireNonNull(designer);
		this.rules = requireNonNull(rules);
	}

	/** Lays a room out; one that asks for a pattern nobody brings stays without frames. */
	RoomDesign design(Home home, Room room) {
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
