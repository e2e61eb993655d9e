// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

import java.util.EnumMap;
import java.util.Map;

/**
 * Tables of styles for screen and paper, made from a few colours each.
 *
 * @param ground ground behind the drawing
 * @param wall   face of the wall
 * @param lower  face of the wall below the rail
 * @param trim   mouldings as seen from the front
 * @param glint  where light is mixed in
 * @param shade  where shade is mixed in
 * @param thing  fixtures and plates
 * @param glass  glass and mirrors
 * @param ink    lines
 * @param quiet  lines of what is hidden or secondary
 * @param note   text and lines of dimensions
 * @param accent what is planned, and services
 */
public record Palette(Tone ground, Tone wall, Tone lower, Tone trim, Tone glint, Tone shade, Tone thing, Tone glass,
		Tone ink, Tone quiet, Tone note, Tone accent) {

	private static final double HAIR = 0.1;
	private static final double FINE = 0.15;
	private static final double MEDIUM = 0.22;
	private static final double BOLD = 0.45;
	private static final double PAINTED_GLINT = 0.35;
	private static final double PAINTED_SHADE = 0.8;

	/** Returns the colours for paper. */
	public static Palette paper() {
		return new Palette(Tone.of(0xffffff), Tone.of(0xfbfaf7), Tone.of(0xfbfaf7), Tone.of(0xf1eee7), Tone.of(0xffffff),
				Tone.of(0x8f8675), Tone.of(0xffffff), Tone.of(0xe9f0f2), Tone.of(0x2e2b27), Tone.of(0x9a948a),
				Tone.of(0x4a4640), Tone.of(0x2f6670));
	}

	/** Returns the colours for a light screen. */
	public static Palette light() {
		return new Palette(Tone.of(0xf6f4ef), Tone.of(0xfdfcf9), Tone.of(0xfdfcf9), Tone.of(0xf2efe8), Tone.of(0xffffff),
				Tone.of(0x8f8675), Tone.of(0xfefefd), Tone.of(0xe3edf0), Tone.of(0x3a3630), Tone.of(0xa39d92),
				Tone.of(0x5a554d), Tone.of(0x2b6f7c));
	}

	/** Returns the colours for a dark screen. */
	public static Palette dark() {
		return new Palette(Tone.of(0x1f2123), Tone.of(0x2a2d30), Tone.of(0x2a2d30), Tone.of(0x3a3e42), Tone.of(0x737b83),
				Tone.of(0x121314), Tone.of(0x34383c), Tone.of(0x33454d), Tone.of(0xc9c5bc), Tone.of(0x7b7871),
				Tone.of(0xb4b0a6), Tone.of(0x7fc3cf));
	}

	/**
	 * Returns these colours with walls and mouldings as they will be painted; light and shade then stay near the paint.
	 *
	 * @param walls     above the rail, null as it is
	 * @param below     below the rail, null as it is
	 * @param mouldings null as they are
	 */
	public Palette painted(Tone walls, Tone below, Tone mouldings) {
		Tone above = walls == null ? wall : walls;
		Tone under = below == null ? lower : below;
		if (mouldings == null) {
			return new Palette(ground, above, under, trim, glint, shade, thing, glass, ink, quiet, note, accent);
		}
		return new Palette(ground, above, under, mouldings, mouldings.mixed(glint, PAINTED_GLINT),
				mouldings.mixed(ink, PAINTED_SHADE), thing, glass, ink, quiet, note, accent);
	}

	/** Returns the look of every role in these colours. */
	public StyleTable styles() {
		Map<Role, Style> map = new EnumMap<>(Role.class);
		walls(map);
		mouldings(map);
		openings(map);
		fixtures(map);
		writing(map);
		return StyleTable.of(map);
	}

	private void walls(Map<Role, Style> map) {
		map.put(Role.WALL_FACE, Style.filled(wall));
		map.put(Role.WALL_FACE_LOWER, Style.filled(lower));
		map.put(Role.WALL_EDGE, Style.stroked(ink, MEDIUM));
		map.put(Role.FLOOR_LINE, Style.stroked(ink, BOLD));
		map.put(Role.CUT, Style.stroked(quiet, HAIR));
	}

	private void mouldings(Map<Role, Style> map) {
		map.put(Role.RELIEF_BRIGHT, Style.filled(trim.mixed(glint, 0.9)));
		map.put(Role.RELIEF_LIGHT, Style.filled(trim.mixed(glint, 0.45)));
		map.put(Role.RELIEF_PLAIN, Style.filled(trim));
		map.put(Role.RELIEF_SHADE, Style.filled(trim.mixed(shade, 0.2)));
		map.put(Role.RELIEF_DEEP, Style.filled(trim.mixed(shade, 0.4)));
		map.put(Role.TRIM_EDGE, Style.stroked(ink, FINE));
		map.put(Role.TRIM_ARRIS, Style.stroked(quiet, HAIR));
		map.put(Role.TRIM_EXISTING, Style.outlined(trim, quiet, FINE));
		map.put(Role.FIELD, Style.filled(Tone.NONE));
	}

	private void openings(Map<Role, Style> map) {
		map.put(Role.CASING, Style.outlined(trim.mixed(glint, 0.2), ink, FINE));
		map.put(Role.LEAF, Style.outlined(trim, ink, FINE));
		map.put(Role.GLASS, Style.outlined(glass, ink, FINE));
		map.put(Role.OPENING_LINE, Style.stroked(quiet, FINE));
		map.put(Role.SWING, Style.stroked(quiet, HAIR, 1.6, 1.0));
	}

	private void fixtures(Map<Role, Style> map) {
		map.put(Role.FIXTURE, Style.outlined(thing, ink, MEDIUM));
		map.put(Role.FIXTURE_PLANNED, Style.outlined(thing, accent, MEDIUM));
		map.put(Role.FIXTURE_LINE, Style.stroked(quiet, FINE));
		map.put(Role.FIXTURE_METAL, Style.outlined(thing.mixed(quiet, 0.35), ink, FINE));
		map.put(Role.FIXTURE_GLASS, Style.outlined(glass, ink, FINE));
		map.put(Role.FIXTURE_DARK, Style.outlined(thing.mixed(ink, 0.7), ink, HAIR));
		map.put(Role.PLATE, Style.outlined(thing, ink, FINE));
		map.put(Role.PLATE_LINE, Style.stroked(ink, HAIR));
		map.put(Role.STUD, Style.stroked(quiet, HAIR, 3.0, 1.5));
		map.put(Role.PIPE, Style.stroked(accent, FINE, 4.0, 1.0, 0.6, 1.0));
		map.put(Role.CABLE, Style.stroked(accent, FINE, 0.8, 0.8));
	}

	private void writing(Map<Role, Style> map) {
		map.put(Role.DIMENSION_LINE, Style.stroked(note.mixed(ground, 0.35), HAIR));
		map.put(Role.DIMENSION_TEXT, Style.stroked(note, HAIR));
		map.put(Role.TITLE, Style.stroked(ink, FINE));
		map.put(Role.NOTE, Style.stroked(quiet.mixed(note, 0.5), HAIR));
	}
}
