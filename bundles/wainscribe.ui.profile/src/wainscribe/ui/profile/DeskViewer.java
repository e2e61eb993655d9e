// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.editparts.FreeformGraphicalRootEditPart;
import org.eclipse.gef.ui.parts.ScrollingGraphicalViewer;

import wainscribe.ui.drafting.appearance.Appearance;
import wainscribe.ui.drafting.tools.TableEditDomain;
import wainscribe.ui.profile.actions.SectionContextMenu;
import wainscribe.ui.profile.actions.SectionSteps;
import wainscribe.ui.profile.desk.DeskListener;
import wainscribe.ui.profile.desk.DeskZoom;
import wainscribe.ui.profile.desk.ProfileDesk;
import wainscribe.ui.profile.editparts.SectionEditPartFactory;
import wainscribe.ui.profile.tools.DeskKeys;
import wainscribe.ui.profile.tools.DeskSelectionTool;
import wainscribe.ui.profile.tools.DeskWheel;
import wainscribe.ui.profile.tools.PointWalk;

/** The viewer of a desk with its tools, keyboard and wheel. The scale is the desk's, not the viewer's. */
final class DeskViewer extends ScrollingGraphicalViewer implements DeskListener {

	private final ProfileDesk desk;
	private final TableEditDomain domain;
	private final DeskZoom zoom;
	private final PointWalk walk;
	private final SectionSteps steps;

	DeskViewer(TableEditDomain domain, ProfileDesk desk) {
		this.domain = domain;
		this.desk = desk;
		zoom = new DeskZoom(this, desk);
		walk = new PointWalk(this, desk);
		steps = new SectionSteps(this, desk);
		domain.setDefaultTool(new DeskSelectionTool(walk));
		domain.loadDefaultTool();
	}

	DeskZoom zoom() {
		return zoom;
	}

	SectionSteps steps() {
		return steps;
	}

	/** Makes the viewer ready to show a section; its control exists. */
	void configure() {
		setRootEditPart(new FreeformGraphicalRootEditPart());
		setEditPartFactory(new SectionEditPartFactory(desk));
		setKeyHandler(new DeskKeys(this, desk, zoom, walk, steps));
		new DeskWheel(zoom).attachTo(this);
		setContextMenu(new SectionContextMenu(this, steps, zoom));
		domain.addViewer(this);
		desk.addListener(this);
		deskChanged();
	}

	/** The ground is painted by the root figure: a theme has its say on the canvas only. */
	@Override
	public void deskChanged() {
		IFigure root = ((FreeformGraphicalRootEditPart) getRootEditPart()).getFigure();
		root.setOpaque(true);
		root.setBackgroundColor(Appearance.colour(desk.colours().drawing().ground()));
		getControl().setBackground(Appearance.colour(desk.colours().drawing().ground()));
	}
}
