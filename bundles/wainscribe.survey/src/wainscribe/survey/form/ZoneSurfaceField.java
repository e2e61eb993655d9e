// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

import wainscribe.model.WainscribeFactory;
import wainscribe.model.WainscribePackage;
import wainscribe.model.Surface;
import wainscribe.model.SurfaceZone;
import wainscribe.model.length.LengthUnit;

/**
 * The kind of surface a finish or paint is for.
 *
 * @param zone  where the element keeps its zone
 * @param words the kinds this row takes
 */
record ZoneSurfaceField(String key, EReference zone, List<String> words) implements NoteField {

	@Override
	public void read(EObject target, String text, ReadingContext context) throws ValueException {
		Surface surface = (Surface) new LiteralForm(WainscribePackage.Literals.SURFACE, words).read(text, context);
		SurfaceZone found = (SurfaceZone) target.eGet(zone);
		if (found == null) {
			found = WainscribeFactory.eINSTANCE.createSurfaceZone();
			target.eSet(zone, found);
		}
		found.setSurface(surface);
	}

	@Override
	public Optional<String> write(EObject source, LengthUnit units) {
		SurfaceZone found = (SurfaceZone) source.eGet(zone);
		return Optional.ofNullable(found).map(each -> each.getSurface().getLiteral());
	}
}
