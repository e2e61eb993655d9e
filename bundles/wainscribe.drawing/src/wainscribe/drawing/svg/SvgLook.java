// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.svg;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import wainscribe.drawing.Role;
import wainscribe.drawing.Style;
import wainscribe.drawing.StyleTable;

/** Gives SVG shapes their look: written on each shape, or by classes that a page styles. */
public interface SvgLook {

	/** Returns the attributes of a path, each with a space before it. */
	String path(Role role);

	/** Returns the attributes of a text, each with a space before it. */
	String text(Role role);

	/**
	 * Returns the look that is written on each shape, as programs that read no style sheets need it.
	 *
	 * @param styles the look of each role
	 * @param scale  millimetres on the wall for one of paper
	 */
	static SvgLook written(StyleTable styles, double scale) {
		return new SvgLook() {
			@Override
			public String path(Role role) {
				return pathAttributes(styles.of(role), scale);
			}

			@Override
			public String text(Role role) {
				return " fill=\"" + styles.of(role).stroke().hex() + '"';
			}
		};
	}

	/** Returns the look by class names, such as {@code ws-wall-face}; see {@link #styleSheet}. */
	static SvgLook classes() {
		return new SvgLook() {
			@Override
			public String path(Role role) {
				return " class=\"" + className(role) + '"';
			}

			@Override
			public String text(Role role) {
				return path(role);
			}
		};
	}

	/**
	 * Returns rules for all classes.
	 *
	 * @param selector put before each class, such as {@code .drawing}
	 * @param styles   the look of each role
	 * @param scale    millimetres on the wall for one of paper
	 */
	static String styleSheet(String selector, StyleTable styles, double scale) {
		StringBuilder css = new StringBuilder();
		for (Role role : Role.values()) {
			Style style = styles.of(role);
			css.append(selector).append(" .").append(className(role)).append('{');
			if (isText(role)) {
				css.append("fill:").append(style.stroke().hex());
			} else {
				css.append("fill:").append(style.fill().hex()).append(";stroke:").append(style.stroke().hex());
				if (style.stroke().visible()) {
					css.append(";stroke-width:").append(SvgNumber.of(style.pen() * scale));
					css.append(style.dashes().isEmpty() ? "" : ";stroke-dasharray:" + dashes(style.dashes(), scale));
				}
			}
			css.append("}\n");
		}
		return css.toString();
	}

	private static boolean isText(Role role) {
		return role == Role.DIMENSION_TEXT || role == Role.TITLE || role == Role.NOTE;
	}

	private static String className(Role role) {
		return "ws-" + role.name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	private static String pathAttributes(Style style, double scale) {
		StringBuilder attributes = new StringBuilder(" fill=\"").append(style.fill().hex()).append('"');
		if (style.stroke().visible()) {
			attributes.append(" stroke=\"").append(style.stroke().hex()).append("\" stroke-width=\"")
					.append(SvgNumber.of(style.pen() * scale)).append('"');
			if (!style.dashes().isEmpty()) {
				attributes.append(" stroke-dasharray=\"").append(dashes(style.dashes(), scale)).append('"');
			}
		}
		return attributes.toString();
	}

	private static String dashes(List<Double> dashes, double scale) {
		return dashes.stream().map(dash -> SvgNumber.of(dash * scale)).collect(Collectors.joining(" "));
	}
}
