// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.desk;

import java.util.Objects;

import org.eclipse.core.runtime.ListenerList;
import org.eclipse.draw2d.geometry.Rectangle;

import wainscribe.model.length.Length;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionBox;
import wainscribe.ui.drafting.appearance.TableColours;
import wainscribe.ui.drafting.painting.Letters;
import wainscribe.ui.drafting.rulers.RulerMarks;
import wainscribe.ui.profile.session.ProfileListener;
import wainscribe.ui.profile.session.ProfileSession;

/** The desk a profile is drawn on: its scale, its colours, and how much of the plane round the section can be reached. */
public final class ProfileDesk implements ProfileListener {

	/** Round the section there is always room to draw, in millimetres. */
	private static final double ROOM = 40;
	private static final double ROOM_SHARE = 0.6;

	private final ProfileSession session;
	private final Letters letters;
	private final ListenerList<DeskListener> listeners = new ListenerList<>();
	private TableColours colours;
	private Plane plane = new Plane(8);

	/**
	 * Creates a desk; {@link #dispose()} ends it.
	 *
	 * @param session the profile on it
	 * @param letters fonts
	 * @param colours what goes with the surroundings
	 */
	public ProfileDesk(ProfileSession session, Letters letters, TableColours colours) {
		this.session = Objects.requireNonNull(session);
		this.letters = Objects.requireNonNull(letters);
		this.colours = Objects.requireNonNull(colours);
		session.addListener(this);
	}

	/** Returns the profile. */
	public ProfileSession session() {
		return session;
	}

	/** Returns the fonts. */
	public Letters letters() {
		return letters;
	}

	/** Returns the colours. */
	public TableColours colours() {
		return colours;
	}

	/** Returns what lies between lengths and pixels. */
	public Plane plane() {
		return plane;
	}

	/** Returns points, segments and handles of what is drawn now. */
	public SectionNodes nodes() {
		return new SectionNodes(session.shown());
	}

	/** Returns the marks of rulers and grid at this scale. */
	public RulerMarks marks() {
		return RulerMarks.of(session.units(), plane.scale());
	}

	/** Returns the distance of the marks that points are drawn to. */
	public Length mark() {
		return marks().fine();
	}

	/** Returns the pixels that can be scrolled to: the draft with room round it. Trials do not change it, so nothing shifts. */
	public Rectangle area() {
		ProfileSection section = session.draft().section();
		SectionBox box = section.box();
		double room = ROOM + ROOM_SHARE * Math.max(box.width().approximateMillimetres(), box.projection().approximateMillimetres());
		int pixels = (int) Math.ceil(room * plane.scale());
		return plane.pixels(box).union(0, 0).expand(pixels, pixels);
	}

	/** Draws to another scale. */
	public void setScale(double pixels) {
		if (pixels != plane.scale()) {
			plane = new Plane(pixels);
			tell();
		}
	}

	/** Draws in other colours. */
	public void setAppearance(TableColours other) {
		if (!other.equals(colours)) {
			colours = other;
			tell();
		}
	}

	@Override
	public void profileChanged() {
		tell();
	}

	/** Starts to tell a listener; adding it twice changes nothing. */
	public void addListener(DeskListener listener) {
		listeners.add(listener);
	}

	/** Stops to tell a listener. */
	public void removeListener(DeskListener listener) {
		listeners.remove(listener);
	}

	/** Leaves the profile. */
	public void dispose() {
		session.removeListener(this);
		listeners.clear();
	}

	private void tell() {
		listeners.forEach(DeskListener::deskChanged);
	}
}
