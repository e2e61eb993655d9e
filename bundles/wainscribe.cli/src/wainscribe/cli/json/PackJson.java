// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.json;

import static wainscribe.cli.json.JsonValues.array;
import static wainscribe.cli.json.JsonValues.text;

import com.google.gson.JsonObject;

import java.nio.file.Path;
import java.util.Collection;

/** What a pack holds, for scripts. */
public final class PackJson {

	private PackJson() {
	}

	/** Returns {@code {out, files: [...]}}, the files relative to the folder with forward slashes. */
	public static JsonObject of(Path out, Collection<Path> files) {
		JsonObject result = new JsonObject();
		result.addProperty("out", out.toString()); //$NON-NLS-1$
		result.add("files", array(files, file -> text(relative(out, file)))); //$NON-NLS-1$
		return result;
	}

	private static String relative(Path out, Path file) {
		Path shown = file.isAbsolute() == out.isAbsolute() && file.startsWith(out) ? out.relativize(file) : file;
		return shown.toString().replace('\\', '/');
	}
}
