// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.actions;

import java.util.List;
import java.util.Locale;

import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.ToolBar;

import wainscribe.commands.ElementWords;
import wainscribe.model.BoxType;
import wainscribe.model.FixtureType;
import wainscribe.ui.drafting.actions.DropDownAction;
import wainscribe.ui.drafting.actions.SimpleAction;
import wainscribe.ui.drafting.actions.ToolAction;
import wainscribe.ui.drafting.tools.TableEditDomain;
import wainscribe.ui.elevation.Messages;
import wainscribe.ui.elevation.TableIcon;
import wainscribe.ui.elevation.table.DrawingTable;
import wainscribe.ui.elevation.table.TableZoom;
import wainscribe.ui.elevation.tools.AddAxisTool;
import wainscribe.ui.elevation.tools.AddTool;
import wainscribe.ui.elevation.tools.MeasureTool;
import wainscribe.ui.elevation.tools.NewThings;
import wainscribe.ui.elevation.tools.WallWalk;

/** The tools and the scale, in a row over the drawing table. */
public final class TableToolBar {

	/** What is put on walls most often when a finished room is done over. */
	private static final List<FixtureType> FIXTURES = List.of(FixtureType.TOWEL_BAR, FixtureType.TOWEL_RING,
			FixtureType.ROBE_HOOK, FixtureType.TP_HOLDER, FixtureType.GRAB_BAR, FixtureType.MIRROR, FixtureType.SHELF,
			FixtureType.ART, FixtureType.SCONCE, FixtureType.CABINET, FixtureType.RADIATOR);

	private final TableEditDomain domain;
	private final DrawingTable table;
	private final TableZoom zoom;
	private final WallWalk walk;

	/** Creates the tool bar of a table. */
	public TableToolBar(TableEditDomain domain, DrawingTable table, TableZoom zoom, WallWalk walk) {
		this.domain = domain;
		this.table = table;
		this.zoom = zoom;
		this.walk = walk;
	}

	/** Creates the control. */
	public ToolBar createControl(Composite parent) {
		ToolBarManager bar = new ToolBarManager(SWT.FLAT | SWT.RIGHT | SWT.HORIZONTAL);
		bar.add(new SelectAction(domain));
		bar.add(new ToolAction(add(ElementWords.of(BoxType.RECEPTACLE)), TableIcon.OUTLET.descriptor(), domain,
				() -> new AddTool(() -> things().box(BoxType.RECEPTACLE))));
		bar.add(new ToolAction(add(ElementWords.of(BoxType.SWITCH)), TableIcon.SWITCH.descriptor(), domain,
				() -> new AddTool(() -> things().box(BoxType.SWITCH))));
		bar.add(new DropDownAction(Messages.TableToolBar_AddFixture, TableIcon.FIXTURE.descriptor(), menu -> FIXTURES.forEach(
				type -> menu.add(new SimpleAction(sentence(ElementWords.of(type)), null,
						() -> domain.setActiveTool(new AddTool(() -> things().fixture(type))))))));
		bar.add(new ToolAction(Messages.TableToolBar_AddAxis, TableIcon.AXIS.descriptor(), domain, AddAxisTool::new));
		bar.add(new ToolAction(Messages.TableToolBar_Measure, TableIcon.MEASURE.descriptor(), domain, MeasureTool::new));
		bar.add(new Separator());
		bar.add(new SimpleAction(Messages.TableToolBar_Smaller, TableIcon.SMALLER.descriptor(), zoom::zoomOut));
		bar.add(scale());
		bar.add(new SimpleAction(Messages.TableToolBar_Larger, TableIcon.LARGER.descriptor(), zoom::zoomIn));
		bar.add(new SimpleAction(Messages.TableContextMenu_FitWall, TableIcon.FIT_WALL.descriptor(),
				() -> walk.wall().ifPresent(zoom::fitWall)));
		bar.add(new SimpleAction(Messages.TableContextMenu_FitRoom, TableIcon.FIT_ROOM.descriptor(), zoom::fitRoom));
		bar.add(new Separator());
		bar.add(new DropDownAction(Messages.TableContextMenu_Layers, TableIcon.LAYERS.descriptor(),
				menu -> ShowMenu.fill(menu, table)));
		ToolBar control = bar.createControl(parent);
		control.addListener(SWT.Dispose, event -> bar.dispose());
		return control;
	}

	/** The button shows the scale and offers others. */
	private ActionContributionItem scale() {
		DropDownAction scale = new DropDownAction(zoom.text(), null, menu -> TableZoom.SCALES
				.forEach(n -> menu.add(new SimpleAction("1:" + n, null, () -> zoom.zoomTo(n))))); //$NON-NLS-1$
		scale.setToolTipText(Messages.TableToolBar_Scale);
		zoom.addListener(() -> scale.setText(zoom.text()));
		ActionContributionItem item = new ActionContributionItem(scale);
		item.setMode(ActionContributionItem.MODE_FORCE_TEXT);
		return item;
	}

	private NewThings things() {
		return new NewThings(table.session().home(), table.session().room());
	}

	private static String add(String word) {
		return NLS.bind(Messages.TableToolBar_Add, word);
	}

	private static String sentence(String word) {
		return word.substring(0, 1).toUpperCase(Locale.getDefault()) + word.substring(1);
	}
}
