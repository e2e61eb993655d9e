// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.Optional;

import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.RailBand;
import wainscribe.layout.StripOutline;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.RoomSession;

/** What a property sheet shows. */
sealed interface Subject {

	/** Returns the history in which its edits become steps. */
	CommandStack history();

	/** Returns the same thing as it is now; empty if it is no longer there. */
	Optional<Subject> current();

	/**
	 * A home.
	 *
	 * @param session the home
	 */
	record OfHome(HomeSession session) implements Subject {

		@Override
		public CommandStack history() {
			return session.commandStack();
		}

		@Override
		public Optional<Subject> current() {
			return Optional.of(this);
		}
	}

	/**
	 * Something in an editor of another kind.
	 *
	 * @param sheet what is shown
	 */
	record OfEditor(SheetSubject sheet) implements Subject {

		@Override
		public CommandStack history() {
			return sheet.history();
		}

		@Override
		public Optional<Subject> current() {
			return sheet.current().map(OfEditor::new);
		}
	}

	/**
	 * Something in a room.
	 *
	 * @param session the room
	 * @param thing   a model element or something derived
	 */
	record InRoom(RoomSession session, Object thing) implements Subject {

		@Override
		public CommandStack history() {
			return session.commandStack();
		}

		/** Derived things are other objects after each edit and are found again; a removed thing gives way to its room. */
		@Override
		public Optional<Subject> current() {
			Optional<?> now = switch (thing) {
				case FrameOutline frame -> session.design().layout().frames().filter(other -> other.id().equals(frame.id())).findFirst();
				case StripOutline strip -> session.design().layout().strips().filter(other -> other.id().equals(strip.id())).findFirst();
				case RailBand rail -> session.design().layout().rail();
				case EObject element -> Optional.of(element).filter(found -> EcoreUtil.isAncestor(session.room(), found));
				default -> Optional.empty();
			};
			return now.map(found -> new InRoom(session, found));
		}
	}
}
