// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.files;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import wainscribe.drawing.elevation.ElevationDrawing;
import wainscribe.drawing.elevation.ElevationOptions;
import wainscribe.drawing.export.ElevationExporter;
import wainscribe.drawing.pdf.PaperSize;
import wainscribe.fabrication.PieceListCsv;
import wainscribe.layout.RoomDesign;
import wainscribe.model.length.LengthUnit;
import wainscribe.report.PackContent;
import wainscribe.report.RoomContent;
import wainscribe.report.html.PackPage;
import wainscribe.report.pdf.CutSheet;
import wainscribe.report.pdf.PackBook;
import wainscribe.report.pdf.PieceLabels;
import wainscribe.report.pdf.StoryStickSheets;
import wainscribe.report.view.PackView;
import wainscribe.report.view.StickView;
import wainscribe.takeoff.TakeoffWorkbook;

/** Writes the single files of a pack into a draft folder. */
public final class PackFiles {

	private final PackContent content;
	private final ElevationDrawing elevation;

	/**
	 * Creates a writer.
	 *
	 * @param content   what the pack says
	 * @param elevation draws
	 */
	public PackFiles(PackContent content, ElevationDrawing elevation) {
		this.content = content;
		this.elevation = elevation;
	}

	/** Writes {@code pack.html}. */
	public void page(PackView view, Path draft) throws IOException {
		try (Writer out = Files.newBufferedWriter(draft.resolve("pack.html"), StandardCharsets.UTF_8)) { //$NON-NLS-1$
			new PackPage().write(view, out);
		}
	}

	/** Writes {@code pack.pdf}. */
	public void book(PackView view, Path draft) throws IOException {
		try (OutputStream out = Files.newOutputStream(draft.resolve("pack.pdf"))) { //$NON-NLS-1$
			new PackBook(elevation).write(content, view, out);
		}
	}

	/** Writes one file of an elevation. */
	public void elevation(ElevationPlan plan, ElevationExporter exporter, Path draft) throws IOException {
		Path folder = Files.createDirectories(draft.resolve("elevations")); //$NON-NLS-1$
		RoomDesign design = plan.room().design();
		try (OutputStream out = Files.newOutputStream(folder.resolve(plan.fileName() + '.' + exporter.fileExtension()))) {
			exporter.write(elevation.draw(design, plan.wall(), ElevationOptions.of(design.home())), out);
		}
	}

	/** Writes {@code cut-sheet.pdf}. */
	public void cutSheet(PackView view, Path draft) throws IOException {
		try (OutputStream out = Files.newOutputStream(draft.resolve("cut-sheet.pdf"))) { //$NON-NLS-1$
			new CutSheet().write(view.title(), view.unit(), view.cutting(), PaperSize.small(unit()), out);
		}
	}

	/** Writes {@code story-sticks.pdf}. */
	public void storySticks(PackView view, List<StickView> sticks, Path draft) throws IOException {
		try (OutputStream out = Files.newOutputStream(draft.resolve("story-sticks.pdf"))) { //$NON-NLS-1$
			new StoryStickSheets(unit()).write(view.title(), sticks, out);
		}
	}

	/** Writes {@code piece-labels.pdf}. */
	public void pieceLabels(PackView view, Path draft) throws IOException {
		try (OutputStream out = Files.newOutputStream(draft.resolve("piece-labels.pdf"))) { //$NON-NLS-1$
			new PieceLabels().write(view.title(), view.cutting(), PaperSize.small(unit()), out);
		}
	}

	private LengthUnit unit() {
		return content.home().getUnits() == null ? LengthUnit.MILLIMETRE : content.home().getUnits();
	}

	/** Writes {@code pieces.csv}. */
	public void pieces(Path draft) throws IOException {
		try (Writer out = Files.newBufferedWriter(draft.resolve("pieces.csv"), StandardCharsets.UTF_8)) { //$NON-NLS-1$
			new PieceListCsv(unit()).write(content.rooms().stream().map(RoomContent::cutList).toList(), out);
		}
	}

	/** Writes {@code quantities.xlsx}. */
	public void quantities(Path draft) throws IOException {
		Path written = draft.resolve("quantities.part"); //$NON-NLS-1$
		try (OutputStream out = Files.newOutputStream(written)) {
			new TakeoffWorkbook().write(content.takeoff(), out);
		}
		TimelessZip.copy(written, draft.resolve("quantities.xlsx")); //$NON-NLS-1$
		Files.delete(written);
	}
}
