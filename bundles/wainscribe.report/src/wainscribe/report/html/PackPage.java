// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.html;

import java.io.IOException;
import java.io.Writer;
import java.util.Locale;
import java.util.Map;

import io.pebbletemplates.pebble.PebbleEngine;
import io.pebbletemplates.pebble.loader.ClasspathLoader;
import io.pebbletemplates.pebble.template.PebbleTemplate;

import wainscribe.report.view.PackView;

/** Writes a pack as one page that needs nothing else: no scripts, no fonts, no pictures from elsewhere. */
public final class PackPage {

	private static final String TEMPLATE = "pack.peb"; //$NON-NLS-1$

	private final PebbleTemplate template;

	/** Reads the template. */
	public PackPage() {
		ClasspathLoader loader = new ClasspathLoader(PackPage.class.getClassLoader());
		loader.setPrefix(PackPage.class.getPackageName().replace('.', '/'));
		PebbleEngine engine = new PebbleEngine.Builder().loader(loader).autoEscaping(true).strictVariables(true)
				.defaultLocale(Locale.ROOT).newLineTrimming(true).cacheActive(false).build();
		template = engine.getTemplate(TEMPLATE);
	}

	/**
	 * Writes the page.
	 *
	 * @param view what it shows
	 * @param out  stays open
	 * @throws IOException if writing fails
	 */
	public void write(PackView view, Writer out) throws IOException {
		template.evaluate(out, Map.of("pack", view)); //$NON-NLS-1$
	}
}
