// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.Segment;

/**
 * Reads a section from a drawing: the one path of an SVG file, or one outline of LWPOLYLINE, POLYLINE, LINE and ARC entities
 * of a DXF file. Curves stay Bezier curves and arcs stay arcs; points are rounded once to 1/8000 mm. Keeps no state.
 * <p>
 * The longest straight side at the edge of the drawing is taken for the back, and the section is turned so that it lies on
 * the wall; where there is none the section comes without a back.
 */
public final class SectionImport {

	/** Larger files are no drawing of a moulding. */
	private static final long LARGEST_FILE = 20_000_000;

	private final double millimetresPerUnit;

	/**
	 * Creates a reader for a unit.
	 *
	 * @param millimetresPerUnit how long one unit of the drawing is: 1 for millimetres, 25.4 for inches, 10 for centimetres
	 * @throws IllegalArgumentException if that is not above 0 and at most 1000
	 */
	public SectionImport(double millimetresPerUnit) {
		if (!(millimetresPerUnit > 0 && millimetresPerUnit <= 1000)) {
			throw new IllegalArgumentException("a unit is above 0 and at most 1000 mm"); //$NON-NLS-1$
		}
		this.millimetresPerUnit = millimetresPerUnit;
	}

	/**
	 * Reads a file by its ending, {@code .svg} or {@code .dxf}.
	 *
	 * @return the section at the origin; it may still have faults that {@link wainscribe.profile.section.SectionCheck} names
	 * @throws SectionImportException one line that names file, place and what was expected
	 */
	public ProfileSection read(Path file) throws SectionImportException {
		String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
		try {
			if (Files.size(file) > LARGEST_FILE) {
				throw new SectionImportException(file, "larger than 20 MB; expected a drawing of one section"); //$NON-NLS-1$
			}
			if (name.endsWith(".svg")) { //$NON-NLS-1$
				return section(new SvgFile(file, millimetresPerUnit).outline());
			}
			if (name.endsWith(".dxf")) { //$NON-NLS-1$
				return section(new DxfFile(file, millimetresPerUnit).outline());
			}
		} catch (SectionImportException e) {
			throw e;
		} catch (MalformedInputException | UncheckedIOException e) {
			throw new SectionImportException(file, "no text; expected an SVG or a text DXF file", e); //$NON-NLS-1$
		} catch (NoSuchFileException e) {
			throw new SectionImportException(file, "no such file; expected an SVG or a DXF file", e); //$NON-NLS-1$
		} catch (IOException e) {
			throw new SectionImportException(file, "can't be read (" + e.getMessage() + "); expected an SVG or a DXF file", e); //$NON-NLS-1$ //$NON-NLS-2$
		}
		throw new SectionImportException(file, "expected a file that ends in .svg or .dxf"); //$NON-NLS-1$
	}

	private static ProfileSection section(List<Segment> outline) {
		return WallSide.of(outline);
	}
}
