// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import wainscribe.model.Room;

/**
 * One result of a rule on one element; derived, never stored.
 *
 * @param kind      broken, not measured, or the rule failed
 * @param rule      id of the rule
 * @param severity  how much it weighs
 * @param room      name of the room
 * @param wall      name of the wall; empty for a whole room
 * @param element   name of the surveyed thing affected, else a frame id, {@code rail}, {@code base} or a paint row's name;
 *                  empty for a whole room or wall
 * @param elementId stable id of the element, or the frame's id, by which a finding is found again after an edit; never empty
 * @param object    what to select on the screen: the surveyed thing, paint, wall or room; for derived things their wall
 * @param message   what is wrong in words a client understands, with the figure found and the figure wanted
 * @param source    where the rule comes from: edition and section, or common practice
 * @param fixable   whether a quick fix can mend it
 */
public record Finding(FindingKind kind, String rule, Severity severity, String room, String wall, String element,
		String elementId, EObject object, String message, String source, boolean fixable) {

	/** Refuses nulls. */
	public Finding {
		Objects.requireNonNull(kind);
		Objects.requireNonNull(rule);
		Objects.requireNonNull(severity);
		Objects.requireNonNull(room);
		Objects.requireNonNull(wall);
		Objects.requireNonNull(element);
		Objects.requireNonNull(elementId);
		Objects.requireNonNull(object);
		Objects.requireNonNull(message);
		Objects.requireNonNull(source);
	}

	/** Returns what stays the same for the same finding after an edit; waivers refer to it. */
	public String key() {
		return rule + '|' + kind + '|' + elementId;
	}

	/** Returns the room that holds the object, if it is in one. */
	public Optional<Room> roomObject() {
		for (EObject at = object; at != null; at = at.eContainer()) {
			if (at instanceof Room found) {
				return Optional.of(found);
			}
		}
		return Optional.empty();
	}
}
