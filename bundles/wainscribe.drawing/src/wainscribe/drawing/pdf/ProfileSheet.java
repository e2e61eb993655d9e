// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.eclipse.osgi.util.NLS;

import wainscribe.drawing.Point;
import wainscribe.drawing.Segment;
import wainscribe.drawing.Style;
import wainscribe.drawing.Tone;
import wainscribe.drawing.text.Messages;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.TrimProfile;

/**
 * A sheet with the section of a profile in its true size, to be cut out and held to a moulding: measures, a rule to check the
 * printer, girth and area. The same profile always gives the same bytes. Immutable.
 */
public final class ProfileSheet {

	/** Filling of the section. */
	static final Tone WOOD = Tone.of(0xe8dcc4);
	/** Ink of lines and text. */
	static final Tone INK = Tone.of(0x1f2428);

	private static final long ID_SEED = 1;
	private static final double MARGIN = 15;
	private static final double HEAD = 34;
	private static final double FOOT = 34;
	private static final double ROOM_FOR_MEASURES = 20;
	/** Chords of the section on paper: finer than any printer. */
	private static final double TOLERANCE = 0.005;

	private final LengthUnit unit;

	/**
	 * Creates a writer of sheets.
	 *
	 * @param unit of measures, rule and paper: A sizes for millimetres, letter and tabloid for inches
	 */
	public ProfileSheet(LengthUnit unit) {
		this.unit = Objects.requireNonNull(unit);
	}

	/**
	 * Writes the sheet as PDF of one page.
	 *
	 * @param profile with a section that may still have faults: it is drawn as it is
	 * @param out     stays open
	 * @throws IOException if it cannot be written
	 */
	public void write(TrimProfile profile, OutputStream out) throws IOException {
		try (PDDocument document = new PDDocument()) {
			document.setDocumentId(ID_SEED);
			document.getDocumentInformation().setTitle(profile.name());
			PaperSize paper = paper(profile);
			PDPage page = new PDPage(new PDRectangle((float) (paper.width() * PdfCanvas.POINTS), (float) (paper.height() * PdfCanvas.POINTS)));
			document.addPage(page);
			try (PdfCanvas canvas = new PdfCanvas(document, page, new PdfTypeface(document))) {
				Point corner = corner(profile, paper);
				drawSection(canvas, profile, corner);
				new SectionMeasures(canvas, unit).draw(profile, corner);
				writeHead(canvas, profile, paper);
				new CheckRule(canvas, unit).draw(MARGIN, MARGIN);
			}
			document.save(out);
		}
	}

	/** Returns the smallest sheet that holds the section, else one made to measure. */
	private PaperSize paper(TrimProfile profile) {
		double width = profile.thickness().approximateMillimetres() + 2 * (MARGIN + ROOM_FOR_MEASURES);
		double height = profile.face().approximateMillimetres() + HEAD + FOOT + 2 * ROOM_FOR_MEASURES;
		PaperSize small = PaperSize.small(unit);
		PaperSize large = PaperSize.large(unit);
		return List.of(small, small.turned(), large, large.turned()).stream()
				.filter(sheet -> width <= sheet.width() && height <= sheet.height()).findFirst()
				.orElseGet(() -> new PaperSize("", Math.max(width, large.width()), Math.max(height, large.height()))); //$NON-NLS-1$
	}

	private static Point corner(TrimProfile profile, PaperSize paper) {
		double free = paper.height() - HEAD - FOOT - profile.face().approximateMillimetres();
		return new Point((paper.width() - profile.thickness().approximateMillimetres()) / 2, FOOT + free / 2);
	}

	/** The wall stands upright at the left, as it does in a section of a room. */
	private static void drawSection(PdfCanvas canvas, TrimProfile profile, Point corner) throws IOException {
		List<Point> outline = onPaper(profile.section().outline(), corner);
		List<Point> face = onPaper(profile.section().face(), corner);
		if (outline.size() > 1) {
			canvas.path(outline.getFirst(), strokes(outline), true, Style.outlined(WOOD, INK, 0.1));
		}
		if (face.size() > 1) {
			canvas.path(face.getFirst(), strokes(face), false, Style.stroked(INK, 0.25));
		}
	}

	private static List<Point> onPaper(List<wainscribe.profile.section.Segment> segments, Point corner) {
		List<Point> points = new ArrayList<>();
		for (wainscribe.profile.section.Segment segment : segments) {
			if (points.isEmpty()) {
				points.add(corner.plus(segment.at(0).y(), segment.at(0).x()));
			}
			segment.chords(TOLERANCE).forEach(spot -> points.add(corner.plus(spot.y(), spot.x())));
		}
		return points;
	}

	private static List<Segment> strokes(List<Point> points) {
		return points.stream().skip(1).<Segment>map(Segment.Straight::new).toList();
	}

	private void writeHead(PdfCanvas canvas, TrimProfile profile, PaperSize paper) throws IOException {
		double top = paper.height() - MARGIN;
		double widest = paper.width() - 2 * MARGIN;
		canvas.text(profile.name(), new Point(MARGIN, top - 5), 5, INK, true, false, widest);
		canvas.text(new SectionMeasures(canvas, unit).sentence(profile), new Point(MARGIN, top - 11), 3.2, INK, false, false, widest);
		String cope = profile.canBeCoped() ? Messages.ProfileSheet_Cope : Messages.ProfileSheet_NoCope;
		canvas.text(cope, new Point(MARGIN, top - 16), 3.2, INK, false, false, widest);
		canvas.text(NLS.bind(Messages.ProfileSheet_Id, profile.id()), new Point(MARGIN, top - 21), 2.6, INK, false, false, widest);
	}
}
