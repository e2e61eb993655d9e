// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.part.ViewPart;

import wainscribe.fabrication.PieceKind;
import wainscribe.layout.FrameOutline;
import wainscribe.layout.RailBand;
import wainscribe.takeoff.cutting.HomePlan;
import wainscribe.takeoff.cutting.PlannedPiece;
import wainscribe.ui.drafting.appearance.AppearanceWatch;
import wainscribe.ui.home.HomeView;
import wainscribe.ui.session.HistoryActions;
import wainscribe.ui.session.HomeSession;
import wainscribe.ui.session.RoomSession;
import wainscribe.ui.session.RoomTracker;

/** Which piece is cut from which length in the home that is looked at; planned again a moment after each edit. */
public final class CuttingView extends ViewPart implements ISelectionListener {

	/** Id of the view. */
	public static final String ID = "wainscribe.ui.cutting"; //$NON-NLS-1$

	private static final int[] BARS_AND_LIST = { 48, 52 };

	private final StackLayout pages = new StackLayout();
	private PlanSource source;
	private Composite body;
	private Composite planPage;
	private Label remarks;
	private Composite emptyPage;
	private Label empty;
	private BarsCanvas bars;
	private BuyTable list;
	private CuttingActions actions;
	private HistoryActions history;
	private RoomTracker tracker;
	private PieceReveal reveal;

	@Override
	public void createPartControl(Composite parent) {
		body = new Composite(parent, SWT.NONE);
		body.setLayout(pages);
		reveal = new PieceReveal(getSite().getPage());
		source = new PlanSource(parent.getDisplay(), this::refresh);
		createPlanPage();
		emptyPage = new Composite(body, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(16, 14).applyTo(emptyPage);
		empty = new Label(emptyPage, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(empty);
		history = HistoryActions.install(getViewSite().getActionBars());
		actions = new CuttingActions(getSite().getShell(), source);
		actions.fill(getViewSite().getActionBars().getToolBarManager());
		installMenu();
		AppearanceWatch.follow(body, getSite(), bars::wear);
		getSite().getPage().addPostSelectionListener(this);
		tracker = new RoomTracker(getSite().getPage(), this::look);
		if (tracker.home().isEmpty()) {
			tracker.selectionChanged(null, getSite().getPage().getSelection(HomeView.ID));
		}
		look();
	}

	private void createPlanPage() {
		planPage = new Composite(body, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(planPage);
		SashForm split = new SashForm(planPage, SWT.HORIZONTAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(split);
		bars = new BarsCanvas(split, new PieceGestures());
		Composite side = new Composite(split, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(side);
		list = new BuyTable(side);
		GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, 0).applyTo(list.control());
		remarks = new Label(side, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).indent(8, 4).applyTo(remarks);
		split.setWeights(BARS_AND_LIST);
	}

	private void installMenu() {
		MenuManager menu = new MenuManager();
		menu.add(new Action(Messages.CuttingActions_Reveal) {

			@Override
			public void run() {
				bars.chosen().ifPresent(CuttingView.this::open);
			}
		});
		actions.fill(menu);
		bars.canvas().setMenu(menu.createContextMenu(bars.canvas()));
	}

	@Override
	public void setFocus() {
		if (pages.topControl == planPage) {
			bars.canvas().setFocus();
		} else {
			body.setFocus();
		}
	}

	@Override
	public void dispose() {
		getSite().getPage().removePostSelectionListener(this);
		if (tracker != null) {
			tracker.stop();
			history.follow(null);
			source.follow(null);
		}
		super.dispose();
	}

	/** Returns the bars. */
	public BarsCanvas bars() {
		return bars;
	}

	/** Returns the best plan so far; empty before the first. */
	public Optional<HomePlan> plan() {
		return source.best();
	}

	/** Tells whether a better plan may come. */
	public boolean isPlanning() {
		return source.isPlanning();
	}

	/** Lights the pieces of the frame or rail that is chosen on an elevation. */
	@Override
	public void selectionChanged(IWorkbenchPart part, ISelection selection) {
		RoomSession room = part == this ? null : Adapters.adapt(part, RoomSession.class);
		if (room == null || !(selection instanceof IStructuredSelection chosen)) {
			return;
		}
		List<?> things = chosen.toList();
		bars.light(piece -> room.room().getName() != null && room.room().getName().equals(piece.room())
				&& things.stream().anyMatch(thing -> belongs(piece, thing)));
	}

	private static boolean belongs(PlannedPiece piece, Object thing) {
		FrameOutline frame = Adapters.adapt(thing, FrameOutline.class);
		if (frame != null) {
			return piece.label().startsWith(frame.id() + '/');
		}
		return Adapters.adapt(thing, RailBand.class) != null
				&& piece.piece().filter(cut -> cut.kind() == PieceKind.RAIL).isPresent();
	}

	private void look() {
		if (tracker == null) {
			// it tells of the open editor while it is being made
			return;
		}
		HomeSession home = tracker.home().orElse(null);
		history.follow(home == null ? null : home.commandStack());
		source.follow(home);
		refresh();
	}

	private void refresh() {
		if (body.isDisposed() || actions == null) {
			return;
		}
		actions.refresh();
		Optional<HomePlan> plan = source.best();
		String home = source.home().map(session -> session.home().getName()).orElse(""); //$NON-NLS-1$
		boolean shown = plan.filter(best -> !best.bars().isEmpty() || !best.accepted().isEmpty() || !best.unplaced().isEmpty()).isPresent();
		if (shown) {
			show(home, plan.get());
		} else {
			setContentDescription(""); //$NON-NLS-1$
			empty.setText(why(home).replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
			emptyPage.layout();
		}
		pages.topControl = shown ? planPage : emptyPage;
		body.layout();
	}

	private String why(String home) {
		if (source.home().isEmpty()) {
			return Messages.CuttingView_NoHome;
		}
		return NLS.bind(source.isPlanning() ? Messages.CuttingView_Planning : Messages.CuttingView_NothingToCut, home);
	}

	private void show(String home, HomePlan plan) {
		HomeSession session = source.home().orElseThrow();
		String currency = session.home().getCurrency() == null ? "" : session.home().getCurrency(); //$NON-NLS-1$
		PlanWords words = new PlanWords(session.profiles(), session.units(), currency);
		boolean done = plan.bars().isEmpty() && plan.unplaced().isEmpty();
		setContentDescription(done ? NLS.bind(Messages.CuttingView_AllCut, home) : words.summary(home, plan, source.isPlanning()));
		List<String> lines = new ArrayList<>(words.remarks(plan));
		lines.add(words.offcuts(session.home().getOffcuts()));
		String said = String.join("\n", lines).strip(); //$NON-NLS-1$
		remarks.setText(said.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		remarks.setVisible(!said.isEmpty());
		((GridData) remarks.getLayoutData()).exclude = said.isEmpty();
		remarks.getParent().layout();
		bars.show(plan, words);
		list.show(plan.buys(), words);
	}

	private void open(PlannedPiece piece) {
		source.room(piece.room()).ifPresent(room -> piece.piece().ifPresent(cut -> reveal.open(room, cut)));
	}

	/** Shows on the elevations what is done with pieces. */
	private final class PieceGestures implements BarsCanvas.Listener {

		@Override
		public void pointedAt(PlannedPiece piece) {
			RoomSession room = piece == null ? null : source.room(piece.room()).orElse(null);
			reveal.light(room, piece == null || room == null ? null : piece.cut());
		}

		@Override
		public void chosen(PlannedPiece piece) {
			source.room(piece.room()).ifPresent(room -> piece.piece().ifPresent(cut -> reveal.show(room, cut)));
		}

		@Override
		public void opened(PlannedPiece piece) {
			open(piece);
		}
	}
}
