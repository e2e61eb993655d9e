// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.elevation;

import wainscribe.drawing.LayerName;
import wainscribe.drawing.Role;
import wainscribe.drawing.Subject;
import wainscribe.model.Service;
import wainscribe.model.ServiceKind;

/** Draws what is in the wall: studs from floor to ceiling, pipes and cables at their height or all the way up. */
final class ServiceSketch {

	private static final double STUD_WIDTH = 38;
	private static final double SHORT_RUN = 300;

	private final Sheet sheet;
	private final WallLines lines;

	ServiceSketch(Sheet sheet, WallLines lines) {
		this.sheet = sheet;
		this.lines = lines;
	}

	void draw(Service service) {
		double x = TreatmentSketch.millimetres(service.getX());
		Subject subject = Subject.element(service.getId());
		if (service.getKind() == ServiceKind.STUD) {
			double half = (service.getWidth() == null ? STUD_WIDTH : TreatmentSketch.millimetres(service.getWidth())) / 2;
			upright(subject, Role.STUD, x - half);
			upright(subject, Role.STUD, x + half);
			return;
		}
		Role role = service.getKind() == ServiceKind.PIPE ? Role.PIPE : Role.CABLE;
		double y = TreatmentSketch.millimetres(service.getY());
		double width = TreatmentSketch.millimetres(service.getWidth());
		if (width > SHORT_RUN) {
			sheet.line(LayerName.SERVICE, subject, role, x, y, x + width, y);
		} else if (service.getHeight() != null) {
			sheet.line(LayerName.SERVICE, subject, role, x, y, x, y + TreatmentSketch.millimetres(service.getHeight()));
		} else {
			upright(subject, role, x);
		}
	}

	private void upright(Subject subject, Role role, double x) {
		sheet.line(LayerName.SERVICE, subject, role, x, lines.floor(x), x, lines.ceiling(x));
	}
}
