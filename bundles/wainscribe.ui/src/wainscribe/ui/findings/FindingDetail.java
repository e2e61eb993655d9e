// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.findings;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;

import wainscribe.rules.Finding;
import wainscribe.rules.FindingKind;
import wainscribe.ui.SpokenName;

/** One finding in full: what is wrong, where, and who says so. */
final class FindingDetail {

	private static final int MARGIN = 10;

	private final StyledText text;

	FindingDetail(Composite parent) {
		text = new StyledText(parent, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
		text.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
		text.setLineSpacing(2);
		text.setAlwaysShowScrollBars(false);
		text.setCaret(null);
		SpokenName.give(text, Messages.FindingDetail_Name);
		clear();
	}

	/** Shows a finding. */
	void show(Finding finding) {
		text.setText(""); //$NON-NLS-1$
		bold(FindingWords.of(finding.severity()));
		text.append("\n" + finding.message()); //$NON-NLS-1$
		if (finding.kind() == FindingKind.NOT_MEASURED) {
			text.append("\n" + Messages.FindingDetail_NotMeasured); //$NON-NLS-1$
		}
		entry(Messages.FindingDetail_Where, FindingWords.placeInHome(finding));
		entry(Messages.FindingDetail_Source, finding.source());
		entry(Messages.FindingDetail_Rule, finding.rule());
		text.setSelection(0);
		text.setTopPixel(0);
	}

	/** Shows how to use it. */
	void clear() {
		text.setText(Messages.FindingDetail_Nothing);
	}

	private void entry(String name, String value) {
		text.append("\n\n"); //$NON-NLS-1$
		bold(name);
		text.append("\n" + value); //$NON-NLS-1$
	}

	private void bold(String words) {
		int start = text.getCharCount();
		text.append(words);
		text.setStyleRange(new StyleRange(start, words.length(), null, null, SWT.BOLD));
	}
}
