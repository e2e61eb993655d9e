// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

import wainscribe.report.view.Caution;
import wainscribe.report.view.Fact;
import wainscribe.report.view.FindingView;
import wainscribe.report.view.PackView;

/** Prints the cover: what was measured, what is proposed, what is open, and what can hurt someone. */
final class Cover {

	private static final double NAMES = 38;

	private final PageFlow flow;

	Cover(PageFlow flow) {
		this.flow = flow;
	}

	void print(PackView pack) throws IOException {
		flow.newPage();
		flow.drop(26);
		flow.paragraph("CLIENT PACK", Ink.SMALL, Ink.ACCENT, 0, flow.width(), true);
		flow.drop(2);
		flow.heading(pack.title(), 13, Ink.TEXT);
		flow.paragraph("What was measured, what is proposed, and what it takes.", 4.2, Ink.SOFT);
		flow.drop(12);
		flow.rule();
		flow.drop(6);
		flow.heading("Measured", 5, Ink.TEXT);
		facts(pack.measured());
		flow.space(6);
		flow.heading("Proposed", 5, Ink.TEXT);
		facts(pack.proposed());
		flow.space(8);
		flow.heading("Open findings", 5, Ink.TEXT);
		if (pack.findings().isEmpty()) {
			flow.paragraph("Nothing is open: every check that was made is satisfied.", Ink.BODY, Ink.TEXT);
		}
		findings(pack.urgent());
		if (!pack.advice().isEmpty()) {
			int count = pack.advice().size();
			flow.paragraph(count == 1 ? "1 piece of advice stands with its room." : count + " pieces of advice stand with their rooms.",
					Ink.BODY, Ink.TEXT);
		}
		flow.space(6);
		flow.heading("Before anyone starts", 5, Ink.TEXT);
		for (Caution caution : pack.cautions()) {
			flow.keep(16);
			flow.paragraph(caution.title(), Ink.BODY, Ink.TEXT, 0, flow.width(), true);
			flow.paragraph(caution.text(), Ink.BODY, Ink.TEXT);
			flow.drop(2.4);
		}
	}

	void facts(List<Fact> facts) throws IOException {
		for (Fact fact : facts) {
			List<String> names = new TextLines(flow.face()).of(fact.name(), Ink.BODY, NAMES - 3);
			List<String> values = new TextLines(flow.face()).of(fact.value(), Ink.BODY, flow.width() - NAMES);
			double line = Ink.BODY * Ink.LEADING;
			int lines = Math.max(names.size(), values.size());
			flow.keep(Math.min(100, lines * line));
			for (int i = 0; i < lines; i++) {
				flow.keep(line);
				flow.drop(line);
				flow.put(i < names.size() ? names.get(i) : "", 0, -Ink.BODY * 0.35, Ink.BODY, Ink.SOFT, false);
				flow.put(i < values.size() ? values.get(i) : "", NAMES, -Ink.BODY * 0.35, Ink.BODY, Ink.TEXT, false);
			}
		}
	}

	void findings(List<FindingView> findings) throws IOException {
		for (FindingView finding : findings) {
			flow.keep(4 * Ink.BODY * Ink.LEADING);
			String head = finding.severity().toUpperCase(Locale.ROOT) + " \u00b7 " + finding.where();
			flow.paragraph(head, Ink.SMALL, Ink.severity(finding.severity()), 0, flow.width(), true);
			flow.paragraph(finding.message(), Ink.BODY, Ink.TEXT);
			flow.paragraph("Source: " + finding.source(), Ink.SMALL, Ink.SOFT);
			flow.drop(2.6);
		}
	}
}
