// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.elevation.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import wainscribe.drawing.elevation.ElevationOptions;
import wainscribe.layout.EffectiveBrief;
import wainscribe.layout.MouldingSection;
import wainscribe.layout.RailBand;
import wainscribe.layout.RoomDesign;
import wainscribe.layout.RunLayout;
import wainscribe.layout.WallLayout;
import wainscribe.model.Wall;

/**
 * All that the drawing of a wall depends on: a wall in an equal state has an equal drawing and is not drawn again.
 *
 * @param options how it is drawn
 * @param brief   the decisions
 * @param profile the frame moulding
 * @param rail    the rail, null for none
 * @param runs    what the layout puts on it
 * @param survey  every measure and word of the wall, of what is on it, and of the room it takes from
 */
record WallState(ElevationOptions options, EffectiveBrief brief, MouldingSection profile, RailBand rail, List<RunLayout> runs,
		List<Object> survey) {

	/** Returns the state of a wall now. */
	static WallState of(RoomDesign design, Wall wall, ElevationOptions options) {
		List<Object> survey = new ArrayList<>();
		note(design.room(), survey);
		note(wall, survey);
		wall.eAllContents().forEachRemaining(object -> note(object, survey));
		return new WallState(options, design.brief(), design.layout().profile(), design.layout().railBand(),
				design.layout().of(wall).map(WallLayout::runs).orElse(List.of()), survey);
	}

	/** Many-valued attributes are copied: the list in the model goes on changing. */
	private static void note(EObject object, List<Object> survey) {
		for (EAttribute attribute : object.eClass().getEAllAttributes()) {
			Object value = object.eGet(attribute);
			survey.add(value instanceof List<?> list ? Arrays.asList(list.toArray()) : value);
		}
	}
}
