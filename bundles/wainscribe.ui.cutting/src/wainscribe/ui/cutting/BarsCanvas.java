// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.cutting;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.events.MouseListener;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

import wainscribe.takeoff.cutting.HomePlan;
import wainscribe.takeoff.cutting.PlannedPiece;
import wainscribe.ui.cutting.BarSheet.Place;
import wainscribe.ui.cutting.BarSheet.Row;
import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.appearance.TableColours;

/**
 * Shows the bars of a plan to scale. Pieces are chosen with the pointer or the arrow keys: left and right go from piece to piece,
 * up and down from bar to bar.
 */
public final class BarsCanvas implements BarPainter.Marks {

	/** Hears what the designer does with pieces. */
	interface Listener {

		/** Another piece is pointed at; null for none. */
		void pointedAt(PlannedPiece piece);

		/** A piece was chosen. */
		void chosen(PlannedPiece piece);

		/** The place of a piece is asked for. */
		void opened(PlannedPiece piece);
	}

	private final ScrolledComposite scroll;
	private final Canvas canvas;
	private final Listener listener;
	private final Font bold;
	private TableColours colours;
	private HomePlan plan;
	private PlanWords words;
	private BarSheet sheet = new BarSheet(List.of(), 0);
	private PlannedPiece chosen;
	private PlannedPiece pointed;
	private Predicate<PlannedPiece> lit = piece -> false;

	BarsCanvas(Composite parent, Listener listener) {
		this.listener = requireNonNull(listener);
		scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
		scroll.setExpandHorizontal(true);
		scroll.setExpandVertical(true);
		canvas = new Canvas(scroll, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
		scroll.setContent(canvas);
		LocalResourceManager fonts = new LocalResourceManager(JFaceResources.getResources(), canvas);
		bold = fonts.create(FontDescriptor.createFrom(canvas.getFont()).setStyle(SWT.BOLD));
		colours = Appearance.of(parent);
		canvas.addPaintListener(event -> paint(event.gc));
		scroll.addListener(SWT.Resize, event -> layOut());
		canvas.addListener(SWT.MouseMove, event -> pointAt(pieceAt(event)));
		canvas.addListener(SWT.MouseExit, event -> pointAt(null));
		canvas.addMouseListener(MouseListener.mouseDownAdapter(event -> press(event.x, event.y)));
		canvas.addMouseListener(MouseListener.mouseDoubleClickAdapter(event -> open()));
		canvas.addListener(SWT.KeyDown, this::key);
		canvas.addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_ARROW_NEXT && event.detail != SWT.TRAVERSE_ARROW_PREVIOUS);
		canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
		canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
		canvas.getAccessible().addAccessibleListener(new Spoken());
	}

	/** Returns the control to lay out. */
	Control control() {
		return scroll;
	}

	/** Returns the control that takes the keyboard and context menus. */
	public Canvas canvas() {
		return canvas;
	}

	/** Shows a plan; what was chosen stays so where the plan has it. */
	void show(HomePlan other, PlanWords otherWords) {
		plan = other;
		words = otherWords;
		layOut();
	}

	/** Wears other colours. */
	void wear(TableColours others) {
		colours = others;
		canvas.redraw();
	}

	/** Lights the pieces of what is chosen elsewhere. */
	void light(Predicate<PlannedPiece> pieces) {
		lit = pieces;
		sheet.places().stream().filter(place -> pieces.test(place.part().piece())).findFirst().ifPresent(this::reveal);
		canvas.redraw();
	}

	/** Returns the pieces that stand out because of what is chosen elsewhere. */
	public List<PlannedPiece> lit() {
		return sheet.places().stream().map(place -> place.part().piece()).filter(lit).toList();
	}

	/** Returns the chosen piece. */
	public Optional<PlannedPiece> chosen() {
		return Optional.ofNullable(chosen).filter(piece -> sheet.placeOf(piece).isPresent());
	}

	/** Returns where a piece is painted, in pixels of the canvas; empty if the plan has it not. */
	public Optional<Rectangle> boundsOf(String room, String label) {
		return sheet.places().stream().filter(place -> place.part().piece().room().equals(room) && place.part().piece().label().equals(label))
				.findFirst().map(place -> new Rectangle(place.part().x(), place.strip().strip(), place.part().width(), place.strip().height()));
	}

	@Override
	public boolean isChosen(PlannedPiece piece) {
		return piece.equals(chosen);
	}

	@Override
	public boolean isLit(PlannedPiece piece) {
		return piece.equals(pointed) || lit.test(piece);
	}

	private void layOut() {
		if (plan == null || canvas.isDisposed()) {
			return;
		}
		int width = scroll.getClientArea().width;
		GC gc = new GC(canvas);
		try {
			sheet = BarSheet.of(plan, width, gc.getFontMetrics().getHeight(), words::of, Messages.BarWords_Accepted);
		} finally {
			gc.dispose();
		}
		scroll.setMinSize(0, sheet.height());
		canvas.redraw();
	}

	private void paint(GC gc) {
		Rectangle area = canvas.getClientArea();
		gc.setBackground(Appearance.colour(colours.drawing().ground()));
		gc.fillRectangle(area);
		if (plan == null) {
			return;
		}
		gc.setAntialias(SWT.ON);
		BarPainter painter = new BarPainter(colours, words, plan, bold, this);
		for (Row row : sheet.rows()) {
			switch (row) {
				case BarSheet.Heading heading -> painter.paint(gc, heading);
				case BarSheet.Strip strip -> painter.paint(gc, strip);
			}
		}
	}

	private PlannedPiece pieceAt(Event event) {
		return sheet.at(event.x, event.y).map(place -> place.part().piece()).orElse(null);
	}

	private void pointAt(PlannedPiece piece) {
		if (piece == null ? pointed != null : !piece.equals(pointed)) {
			pointed = piece;
			canvas.setToolTipText(piece == null ? null
					: sheet.placeOf(piece).map(place -> words.of(piece, place.strip().bar())).orElse(null));
			canvas.redraw();
			listener.pointedAt(piece);
		}
	}

	private void press(int x, int y) {
		canvas.setFocus();
		sheet.at(x, y).ifPresent(this::choose);
	}

	private void open() {
		chosen().ifPresent(listener::opened);
	}

	private void choose(Place place) {
		chosen = place.part().piece();
		reveal(place);
		canvas.redraw();
		canvas.getAccessible().sendEvent(ACC.EVENT_NAME_CHANGED, null);
		listener.chosen(chosen);
	}

	private void reveal(Place place) {
		int top = place.strip().y();
		int bottom = place.strip().strip() + place.strip().height();
		int origin = scroll.getOrigin().y;
		int height = scroll.getClientArea().height;
		if (top < origin) {
			scroll.setOrigin(0, top);
		} else if (bottom > origin + height) {
			scroll.setOrigin(0, bottom - height);
		}
	}

	private void key(Event event) {
		List<Place> places = sheet.places();
		if (places.isEmpty()) {
			return;
		}
		int now = chosen == null ? -1 : sheet.placeOf(chosen).map(places::indexOf).orElse(-1);
		switch (event.keyCode) {
			case SWT.ARROW_RIGHT -> choose(places.get(Math.min(places.size() - 1, now + 1)));
			case SWT.ARROW_LEFT -> choose(places.get(Math.max(0, now - 1)));
			case SWT.ARROW_DOWN -> chooseBar(now < 0 ? 0 : sheet.strips().indexOf(places.get(now).strip()) + 1);
			case SWT.ARROW_UP -> chooseBar(now < 0 ? 0 : sheet.strips().indexOf(places.get(now).strip()) - 1);
			case SWT.HOME -> choose(places.getFirst());
			case SWT.END -> choose(places.getLast());
			case SWT.CR, SWT.KEYPAD_CR -> open();
			default -> {
				// other keys are the workbench's
			}
		}
	}

	private void chooseBar(int index) {
		if (index >= 0 && index < sheet.strips().size() && !sheet.strips().get(index).parts().isEmpty()) {
			BarSheet.Strip strip = sheet.strips().get(index);
			choose(new Place(strip, strip.parts().getFirst()));
		}
	}

	/** Says the chosen piece, or what the control is. */
	private final class Spoken extends AccessibleAdapter {

		@Override
		public void getName(AccessibleEvent event) {
			if (event.childID == ACC.CHILDID_SELF) {
				event.result = chosen().flatMap(sheet::placeOf).map(place -> words.of(place.part().piece(), place.strip().bar()))
						.orElse(Messages.BarsCanvas_Name);
			}
		}
	}
}
