// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

import wainscribe.model.Wall;
import wainscribe.model.length.LengthUnit;

/** The wall at whose left end a diagonal begins or ends. */
record DiagonalEndField(String key, EReference end) implements NoteField {

	@Override
	public void read(EObject target, String text, ReadingContext context) throws ValueException {
		String name = WallNameForm.WALL_NAME.read(text, context);
		context.room().getWalls().stream().filter(wall -> name.equals(wall.getName())).findFirst()
				.ifPresent(wall -> target.eSet(end, wall));
	}

	@Override
	public Optional<String> write(EObject source, LengthUnit units) {
		Wall wall = (Wall) source.eGet(end);
		return Optional.ofNullable(wall).map(found -> NoteText.escaped(found.getName()));
	}
}
