// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.export;

import java.io.IOException;
import java.io.OutputStream;

import wainscribe.drawing.Drawing;

/**
 * Writes an elevation to a kind of file. Implementations keep no state: the same drawing always gives the same bytes.
 * <p>
 * Contributed through the extension point {@code wainscribe.drawing.exporters}.
 */
public interface ElevationExporter {

	/** Returns the id that commands refer to: lower-case letters, digits and hyphens; unique. */
	String id();

	/** Returns the name shown where a kind of file is chosen. */
	String name();

	/** Returns the extension of file names, without a dot, in lower case. */
	String fileExtension();

	/**
	 * Writes a drawing.
	 *
	 * @param drawing what to write
	 * @param out     where to; stays open
	 * @throws IOException if {@code out} fails; characters that the file cannot hold never are a reason
	 */
	void write(Drawing drawing, OutputStream out) throws IOException;
}
