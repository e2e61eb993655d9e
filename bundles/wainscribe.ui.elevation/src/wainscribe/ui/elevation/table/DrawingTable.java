// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.ListenerList;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.emf.common.command.Command;
import org.eclipse.osgi.util.NLS;

import wainscribe.drawing.Drawing;
import wainscribe.drawing.LayerName;
import wainscribe.drawing.StyleTable;
import wainscribe.drawing.elevation.ElevationDrawing;
import wainscribe.drawing.elevation.ElevationOptions;
import wainscribe.layout.RoomDesign;
import wainscribe.model.Wall;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.ui.drafting.appearance.TableColours;
import wainscribe.ui.drafting.painting.Letters;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.session.RoomSession;
import wainscribe.ui.session.RoomSessionListener;

/**
 * What lies on the drawing table of one editor: the drawings of all walls of a room, at a scale, in an appearance, with some
 * layers shown. Draws each wall once for each state of the room; everything on the screen is painted from these drawings. The
 * first are made when somebody asks for them: by then the scale should be known.
 */
public final class DrawingTable implements RoomSessionListener {

	/** Pixels for one millimetre of paper: sizes letters and lines, whatever the scale. */
	public static final double PAPER = 4.4;

	/** Below this scale dimension strings would only be a thicket; the walls are drawn without. About 1:63. */
	private static final double DIMENSIONS_FROM = 0.06;

	private final RoomSession session;
	private final Trial trial;
	private final Letters letters;
	private final Function<ProfileCatalogue, ElevationDrawing> pencils;
	private final ListenerList<TableListener> listeners = new ListenerList<>();
	/** Labels of pieces are for the cutting: at the table they are shown when asked for. */
	private final Set<LayerName> layers = EnumSet.complementOf(EnumSet.of(LayerName.PIECE));
	private final Overlays overlays = new Overlays(this::refresh);
	private Map<Wall, Drawing> drawings = new IdentityHashMap<>();
	private ProfileCatalogue profiles;
	private ElevationDrawing pencil;
	private Map<Wall, WallState> drawnStates = new IdentityHashMap<>();
	private RoomDesign shown;
	private StripArrangement arrangement;
	private TableColours colours;
	private StyleTable styles;
	private double scale;
	private String problem;

	/**
	 * Lays a room on the table.
	 *
	 * @param session  the room
	 * @param pencils  makes what draws walls with the profiles of the home
	 * @param letters  fonts; given back by whoever made them
	 * @param colours  how it looks
	 * @param scale    pixels for a millimetre at first
	 */
	public DrawingTable(RoomSession session, Function<ProfileCatalogue, ElevationDrawing> pencils, Letters letters,
			TableColours colours, double scale) {
		this.session = Objects.requireNonNull(session);
		this.trial = new Trial(session.homeSession()::designer);
		this.pencils = Objects.requireNonNull(pencils);
		this.letters = Objects.requireNonNull(letters);
		this.scale = scale;
		setColours(colours);
		shown = session.design();
		session.addListener(this);
	}

	/** Stops to follow the room. */
	public void dispose() {
		session.removeListener(this);
	}

	/** Returns the room's session. */
	public RoomSession session() {
		return session;
	}

	/** Returns the unit of the home. */
	public LengthUnit units() {
		return session.units();
	}

	/** Returns the walls in walking order. */
	public List<Wall> walls() {
		return session.room().getWalls();
	}

	/** Returns the design that is shown: the room's, or while something is tried what it would lead to. */
	public RoomDesign design() {
		return shown;
	}

	/** Returns why the drawings are not those of the room as it is, as a sentence; empty while they are. */
	public Optional<String> problem() {
		return Optional.ofNullable(problem);
	}

	/** Returns the drawing of a wall. */
	public Drawing drawingOf(Wall wall) {
		begin();
		return drawings.get(wall);
	}

	/** Returns where a wall lies. */
	public Projection placeOf(Wall wall) {
		begin();
		return arrangement.of(wall);
	}

	/** Returns the pixels that all walls take. */
	public Rectangle area() {
		begin();
		return arrangement.area();
	}

	/** Returns the fonts. */
	public Letters letters() {
		return letters;
	}

	/** Returns the colours. */
	public TableColours colours() {
		return colours;
	}

	/** Returns the looks of the drawing. */
	public StyleTable styles() {
		return styles;
	}

	/** Returns pixels for a millimetre. */
	public double scale() {
		return scale;
	}

	/** Draws everything to another scale. */
	public void setScale(double pixelsPerMillimetre) {
		if (scale != pixelsPerMillimetre) {
			scale = pixelsPerMillimetre;
			if (arrangement != null) {
				refresh();
			}
		}
	}

	/**
	 * Works out which pixels some walls would take side by side at another scale, with their writing.
	 *
	 * @param walls              walls of the room
	 * @param pixelsPerMillimetre the scale
	 */
	public Dimension sizeAt(List<Wall> walls, double pixelsPerMillimetre) {
		sharpen();
		ElevationOptions options = optionsAt(pixelsPerMillimetre);
		Map<Wall, Drawing> drawn = new IdentityHashMap<>();
		walls.forEach(wall -> drawn.put(wall, pencil.draw(shown, wall, options)));
		Rectangle area = StripArrangement.of(walls, drawn::get, pixelsPerMillimetre).area();
		return area.getSize();
	}

	/** Draws everything in other colours. */
	public void setAppearance(TableColours other) {
		setColours(other);
		tell(TableListener::drawingsChanged);
	}

	/** Returns what is laid over the drawing. */
	public Overlays overlays() {
		return overlays;
	}

	/** Tells whether all of some layers are shown. */
	public boolean shows(Set<LayerName> some) {
		return layers.containsAll(some);
	}

	/** Shows or hides layers. */
	public void show(Set<LayerName> some, boolean visible) {
		if (visible ? layers.addAll(some) : layers.removeAll(some)) {
			refresh();
		}
	}

	/**
	 * Shows what a step would lead to, until {@link #endTrial()}. The walls stay where they are.
	 *
	 * @param step a command that can be executed and was not yet
	 * @param look told the design of the trial while the model is as after the step
	 */
	public void tryOut(Command step, Consumer<RoomDesign> look) {
		try {
			trial.run(session.home(), session.room(), step, design -> {
				shown = design;
				draw();
				problem = null;
				look.accept(design);
				tell(TableListener::trialShown);
			});
		} catch (ArithmeticException | IllegalArgumentException e) {
			problem = NLS.bind(Messages.DrawingTable_Problem, e.getLocalizedMessage());
			tell(TableListener::trialShown);
		}
	}

	/** Shows the room as it is. */
	public void endTrial() {
		if (shown != session.design() || problem != null) {
			refresh();
		}
	}

	/** Starts to tell a listener. */
	public void addListener(TableListener listener) {
		listeners.add(listener);
	}

	/** Stops to tell a listener. */
	public void removeListener(TableListener listener) {
		listeners.remove(listener);
	}

	@Override
	public void designChanged(RoomSession changed) {
		refresh();
	}

	@Override
	public void roomReplaced(RoomSession changed) {
		redraw();
		tell(TableListener::roomReplaced);
	}

	/** Draws the room as it is now. */
	public void refresh() {
		redraw();
		tell(TableListener::drawingsChanged);
	}

	private void begin() {
		if (arrangement == null) {
			redraw();
		}
	}

	/** What cannot be drawn leaves the last good drawing where it is. */
	private void redraw() {
		RoomDesign before = shown;
		try {
			shown = session.design();
			draw();
			arrangement = StripArrangement.of(walls(), drawings::get, scale);
			problem = null;
		} catch (ArithmeticException | IllegalArgumentException e) {
			if (arrangement == null) {
				throw e;
			}
			ILog.get().warn(e.getLocalizedMessage(), e);
			shown = before;
			problem = NLS.bind(Messages.DrawingTable_Problem, e.getLocalizedMessage());
		}
	}

	private void draw() {
		sharpen();
		Map<Wall, WallState> states = new IdentityHashMap<>();
		Map<Wall, Drawing> drawn = new IdentityHashMap<>();
		ElevationOptions options = optionsAt(scale);
		for (Wall wall : walls()) {
			WallState state = WallState.of(shown, wall, options);
			states.put(wall, state);
			drawn.put(wall, state.equals(drawnStates.get(wall)) ? drawings.get(wall) : pencil.draw(shown, wall, options));
		}
		drawnStates = states;
		drawings = drawn;
	}

	/** Takes another pencil once the profiles of the home have changed; then every wall is drawn again. */
	private void sharpen() {
		ProfileCatalogue now = session.homeSession().profiles();
		if (now != profiles) {
			profiles = now;
			pencil = pencils.apply(now);
			drawnStates = Map.of();
		}
	}

	private ElevationOptions optionsAt(double at) {
		return ElevationOptions.of(session.home()).withUnit(units()).withScale(PAPER / at).withLayers(layersAt(at));
	}

	private Set<LayerName> layersAt(double at) {
		Set<LayerName> drawn = EnumSet.noneOf(LayerName.class);
		drawn.addAll(layers);
		if (at < DIMENSIONS_FROM) {
			drawn.remove(LayerName.DIMENSION);
		}
		return drawn;
	}

	private void setColours(TableColours other) {
		colours = Objects.requireNonNull(other);
		styles = other.drawing().styles();
	}

	private void tell(Consumer<TableListener> news) {
		listeners.forEach(news);
	}
}
