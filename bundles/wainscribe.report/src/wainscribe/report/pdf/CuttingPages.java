// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import java.io.IOException;

import wainscribe.drawing.Style;
import wainscribe.drawing.Tone;
import wainscribe.report.view.BarView;
import wainscribe.report.view.CutView;
import wainscribe.report.view.CuttingView;
import wainscribe.report.view.Fact;

/** Prints the cutting plan: what to buy, and every bar to scale. */
final class CuttingPages {

	private static final double BAR = 7;
	private static final double LETTERS = 2.4;
	private static final double BLOCK = 20;
	private static final Tone PIECE = Tone.of(0xe4dccb);
	private static final Tone LEFT = Tone.of(0xffffff);

	private final PageFlow flow;

	CuttingPages(PageFlow flow) {
		this.flow = flow;
	}

	void print(CuttingView plan) throws IOException {
		flow.newPage();
		flow.heading("Cutting plan", 8.5, Ink.TEXT);
		flow.drop(3);
		new Cover(flow).facts(plan.facts());
		for (String note : plan.notes()) {
			flow.paragraph(note, Ink.BODY, Ink.WARNING);
			flow.drop(1);
		}
		if (!plan.buys().isEmpty()) {
			flow.space(5);
			flow.heading("Buy", 5, Ink.TEXT);
			for (Fact line : plan.buys()) {
				flow.paragraph(line.name() + "  " + line.value(), Ink.BODY, Ink.TEXT);
				flow.drop(0.8);
			}
		}
		if (!plan.bars().isEmpty()) {
			flow.space(5);
			flow.heading("Bars, to scale", 5, Ink.TEXT);
			for (BarView bar : plan.bars()) {
				bar(bar);
			}
		}
		if (!plan.accepted().isEmpty()) {
			flow.space(5);
			flow.heading("Bars of accepted plans", 5, Ink.TEXT);
			for (BarView bar : plan.accepted()) {
				bar(bar);
			}
		}
	}

	private void bar(BarView bar) throws IOException {
		flow.keep(BLOCK);
		flow.put(bar.number() + "  " + bar.what(), 0, 3.6, Ink.BODY, Ink.TEXT, true);
		String side = bar.source() + " \u00b7 " + bar.remainder();
		flow.put(side, flow.width() - flow.face().width(side, Ink.SMALL), 3.6, Ink.SMALL, Ink.SOFT, false);
		flow.drop(5.2);
		drawing(flow, bar, BAR);
		flow.drop(BAR + 1.2);
		StringBuilder pieces = new StringBuilder();
		for (CutView piece : bar.pieces()) {
			pieces.append(pieces.isEmpty() ? "" : "  \u00b7  ").append(piece.room()).append(' ').append(piece.label()).append(" = ")
					.append(piece.length());
		}
		flow.paragraph(pieces.toString(), Ink.SMALL, Ink.SOFT);
		flow.drop(3);
	}

	/** Draws a bar with its pieces below the last line; the flow does not move on. */
	static void drawing(PageFlow flow, BarView bar, double height) throws IOException {
		double scale = flow.width();
		flow.box(0, 0, bar.share() * scale, height, Style.outlined(LEFT, Ink.SOFT, 0.2));
		double x = bar.trim() * scale;
		if (bar.trim() > 0) {
			flow.box(0, 0, x, height, Style.filled(Ink.LINE));
		}
		for (CutView piece : bar.pieces()) {
			double width = piece.share() * scale;
			flow.box(x, 0, width, height, Style.outlined(PIECE, Ink.TEXT, 0.2));
			String words = flow.face().width(piece.length(), LETTERS) < width - 1 ? piece.length() : "";
			flow.put(words, x + (width - flow.face().width(words, LETTERS)) / 2, height / 2 + LETTERS * 0.35, LETTERS, Ink.TEXT, false);
			x += width + bar.kerf() * scale;
		}
	}
}
