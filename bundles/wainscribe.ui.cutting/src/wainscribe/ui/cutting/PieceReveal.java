// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.cutting;

import static java.util.Objects.requireNonNull;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

import wainscribe.fabrication.Piece;
import wainscribe.ui.ElementSelector;
import wainscribe.ui.RoomEditors;
import wainscribe.ui.session.RoomSession;

/** Shows on the elevations where a piece goes. */
final class PieceReveal {

	private final IWorkbenchPage page;

	PieceReveal(IWorkbenchPage page) {
		this.page = requireNonNull(page);
	}

	/** Selects what the piece belongs to, where its room is open; the plan keeps the keyboard. */
	void show(RoomSession room, Piece piece) {
		for (IEditorReference reference : page.getEditorReferences()) {
			IEditorPart editor = reference.getEditor(false);
			if (editor != null && Adapters.adapt(editor, RoomSession.class) == room) {
				page.bringToTop(editor);
				select(editor, piece);
			}
		}
	}

	/** Opens the room, selects what the piece belongs to and goes to the drawing. */
	void open(RoomSession room, Piece piece) {
		try {
			select(RoomEditors.open(page, room, true), piece);
		} catch (PartInitException e) {
			ILog.get().log(e.getStatus());
		}
	}

	/** Lights what the piece belongs to where its room is drawn, and nothing else; null lights nothing. */
	void light(RoomSession room, Piece piece) {
		for (IEditorReference reference : page.getEditorReferences()) {
			IEditorPart editor = reference.getEditor(false);
			ElementSelector selector = editor == null ? null : Adapters.adapt(editor, ElementSelector.class);
			if (selector != null) {
				boolean here = piece != null && Adapters.adapt(editor, RoomSession.class) == room;
				selector.light(here ? piece.wall() : "", here ? element(piece) : ""); //$NON-NLS-1$ //$NON-NLS-2$
			}
		}
	}

	private static void select(IEditorPart editor, Piece piece) {
		ElementSelector selector = Adapters.adapt(editor, ElementSelector.class);
		if (selector != null) {
			selector.select(piece.wall(), element(piece));
		}
	}

	/** A side is called after its frame; a run is called after its kind. */
	static String element(Piece piece) {
		return switch (piece.kind()) {
			case RAIL, BASE, CROWN -> piece.kind().word();
			default -> piece.label().contains("/") ? piece.label().substring(0, piece.label().lastIndexOf('/')) : piece.label(); //$NON-NLS-1$
		};
	}
}
