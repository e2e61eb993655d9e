// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

import java.util.Objects;

/**
 * What a shape stands for, so that a click on a drawing finds the thing.
 *
 * @param kind what sort of thing
 * @param id   id of the surveyed element, of the frame or of the strip; empty where the kind says it all
 */
public record Subject(Kind kind, String id) {

	/** Stands for nothing that could be chosen. */
	public static final Subject NONE = new Subject(Kind.NONE, "");

	/** What sort of thing a shape stands for. */
	public enum Kind {
		/** Nothing that could be chosen. */
		NONE,
		/** The wall itself. */
		WALL,
		/** A surveyed element: opening, fixture, box, existing trim, service. */
		ELEMENT,
		/** A panel frame of the layout. */
		FRAME,
		/** A batten or a board of a grid. */
		STRIP,
		/** The rail of the room. */
		RAIL,
		/** The new base. */
		BASE,
		/** The new crown. */
		CROWN
	}

	/** Refuses nulls. */
	public Subject {
		Objects.requireNonNull(kind);
		Objects.requireNonNull(id);
	}

	/** Returns the subject of a surveyed element; an element without id stands for nothing. */
	public static Subject element(String id) {
		return id == null ? NONE : new Subject(Kind.ELEMENT, id);
	}

	/** Returns the subject of a frame. */
	public static Subject frame(String id) {
		return new Subject(Kind.FRAME, id);
	}

	/** Returns the subject of a strip. */
	public static Subject strip(String id) {
		return new Subject(Kind.STRIP, id);
	}

	/** Returns the one subject of a kind that needs no id. */
	public static Subject of(Kind kind) {
		return new Subject(kind, "");
	}
}
