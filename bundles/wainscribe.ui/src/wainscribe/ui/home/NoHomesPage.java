// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.home;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchPartSite;

import wainscribe.ui.Commands;

/** What the view shows before there is a home: what to do first. */
final class NoHomesPage {

	private static final int MARGIN = 20;
	private static final int TEXT_WIDTH = 180;

	private final Composite page;

	NoHomesPage(Composite parent, IWorkbenchPartSite site) {
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(MARGIN, MARGIN).spacing(0, 10).applyTo(page);
		Label title = new Label(page, SWT.WRAP);
		title.setText(Messages.NoHomesPage_Title);
		title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
		GridDataFactory.fillDefaults().grab(true, false).hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(title);
		Label text = new Label(page, SWT.WRAP);
		text.setText(Messages.NoHomesPage_Text);
		GridDataFactory.fillDefaults().grab(true, false).hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(text);
		button(Messages.NoHomesPage_NewHome, Commands.NEW_HOME, site);
		button(Messages.NoHomesPage_OpenHome, Commands.OPEN_HOME, site);
	}

	Control control() {
		return page;
	}

	private void button(String text, String command, IWorkbenchPartSite site) {
		Button button = new Button(page, SWT.PUSH);
		button.setText(text);
		GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(button);
		button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> Commands.run(command, site)));
	}
}
