// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Objects;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

import wainscribe.drawing.Palette;
import wainscribe.drawing.elevation.ElevationDrawing;
import wainscribe.drawing.elevation.ElevationOptions;
import wainscribe.drawing.pdf.ElevationPage;
import wainscribe.drawing.pdf.PaperSize;
import wainscribe.drawing.pdf.PdfTypeface;
import wainscribe.drawing.pdf.SheetFit;
import wainscribe.layout.RoomDesign;
import wainscribe.model.length.LengthUnit;
import wainscribe.report.PackContent;
import wainscribe.report.files.ElevationPlan;
import wainscribe.report.view.Fact;
import wainscribe.report.view.PackView;
import wainscribe.report.view.RoomView;

/** Prints a pack: cover, then each room with its elevations at true scale and its schedules. */
public final class PackBook {

	/** The id of the document is made from this and its content, not from the time: equal packs give equal bytes. */
	private static final long ID_SEED = 1;

	private final ElevationDrawing elevation;

	/** Creates a printer. */
	public PackBook(ElevationDrawing elevation) {
		this.elevation = Objects.requireNonNull(elevation);
	}

	/**
	 * Prints a pack.
	 *
	 * @param content what the drawings show
	 * @param view    what the pages say
	 * @param out     stays open
	 * @throws IOException if writing fails
	 */
	public void write(PackContent content, PackView view, OutputStream out) throws IOException {
		LengthUnit unit = content.home().getUnits() == null ? LengthUnit.MILLIMETRE : content.home().getUnits();
		try (PDDocument document = new PDDocument()) {
			document.setDocumentId(ID_SEED);
			document.getDocumentInformation().setTitle(view.title());
			document.getDocumentCatalog().setLanguage("en");
			PdfTypeface face = new PdfTypeface(document);
			Bookmarks bookmarks = new Bookmarks(document);
			print(content, view, new Press(document, face, PaperSize.small(unit), bookmarks));
			bookmarks.open();
			new PageNumbers(document, face).print(view.title());
			document.save(out);
		}
	}

	/** What pages are printed with. */
	private record Press(PDDocument document, PdfTypeface face, PaperSize paper, Bookmarks bookmarks) {
	}

	private void print(PackContent content, PackView view, Press press) throws IOException {
		int first = press.document().getNumberOfPages();
		try (PageFlow flow = new PageFlow(press.document(), press.face(), press.paper())) {
			new Cover(flow).print(view);
		}
		press.bookmarks().chapter("At a glance", press.document().getPage(first));
		List<ElevationPlan> plans = ElevationPlan.of(content);
		for (int i = 0; i < view.rooms().size(); i++) {
			RoomView room = view.rooms().get(i);
			int index = i;
			room(room, plans.stream().filter(plan -> plan.room() == content.rooms().get(index)).toList(), view.unit(), press);
		}
		cutting(view, press);
		shopping(view, press);
	}

	private void room(RoomView room, List<ElevationPlan> plans, String unit, Press press) throws IOException {
		int first = press.document().getNumberOfPages();
		try (PageFlow flow = new PageFlow(press.document(), press.face(), press.paper())) {
			new RoomPages(flow).summary(room);
		}
		press.bookmarks().chapter(room.name(), press.document().getPage(first));
		ElevationPage pages = new ElevationPage(press.document(), press.face(), Palette.paper().styles());
		for (ElevationPlan plan : plans) {
			RoomDesign design = plan.room().design();
			ElevationOptions options = ElevationOptions.of(design.home());
			SheetFit fit = SheetFit.of(options.unit(),
					scale -> elevation.draw(design, plan.wall(), options.withScale(scale)));
			PDPage page = pages.add(fit, (canvas, paper) -> {
			});
			press.bookmarks().section("Wall " + (plan.wall().getName() == null ? "" : plan.wall().getName()), page);
		}
		int schedules = press.document().getNumberOfPages();
		try (PageFlow flow = new PageFlow(press.document(), press.face(), press.paper())) {
			new RoomPages(flow).schedules(room, unit);
		}
		if (press.document().getNumberOfPages() > schedules) {
			press.bookmarks().section("Schedules", press.document().getPage(schedules));
		}
	}

	private static void cutting(PackView view, Press press) throws IOException {
		if (view.cutting().isEmpty()) {
			return;
		}
		int first = press.document().getNumberOfPages();
		try (PageFlow flow = new PageFlow(press.document(), press.face(), press.paper())) {
			new CuttingPages(flow).print(view.cutting());
		}
		press.bookmarks().chapter("Cutting plan", press.document().getPage(first));
	}

	private static void shopping(PackView view, Press press) throws IOException {
		if (view.shopping().isEmpty()) {
			return;
		}
		int first = press.document().getNumberOfPages();
		try (PageFlow flow = new PageFlow(press.document(), press.face(), press.paper())) {
			new RoomPages(flow).quantities("Quantities and prices, all rooms together", view.shopping());
			flow.space(6);
			for (Fact fact : view.totals()) {
				new Cover(flow).facts(List.of(fact));
			}
		}
		press.bookmarks().chapter("Quantities and prices", press.document().getPage(first));
	}
}
