// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PageMode;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

import wainscribe.drawing.export.DrawingText;

/** The bookmarks of a document: chapters and their sections. */
final class Bookmarks {

	private final PDDocument document;
	private final PDDocumentOutline outline = new PDDocumentOutline();
	private PDOutlineItem chapter;

	Bookmarks(PDDocument document) {
		this.document = document;
	}

	void chapter(String title, PDPage page) {
		chapter = item(title, page);
		outline.addLast(chapter);
	}

	void section(String title, PDPage page) {
		chapter.addLast(item(title, page));
	}

	private static PDOutlineItem item(String title, PDPage page) {
		PDPageFitDestination destination = new PDPageFitDestination();
		destination.setPage(page);
		PDOutlineItem item = new PDOutlineItem();
		item.setTitle(DrawingText.clean(title));
		item.setDestination(destination);
		return item;
	}

	/** Shows the chapters when the document is opened. */
	void open() {
		outline.openNode();
		document.getDocumentCatalog().setDocumentOutline(outline);
		document.getDocumentCatalog().setPageMode(PageMode.USE_OUTLINES);
	}
}
