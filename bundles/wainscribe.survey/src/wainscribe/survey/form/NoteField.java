// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import wainscribe.model.length.LengthUnit;

/** What one key of a note stands for in the model. */
public interface NoteField {

	/** Returns the key. */
	String key();

	/**
	 * Puts a value into the model.
	 *
	 * @param target element of the row
	 * @param text   what stands behind the key, without spaces round it, perhaps empty
	 * @throws ValueException if the text is not what the key takes
	 */
	void read(EObject target, String text, ReadingContext context) throws ValueException;

	/**
	 * Writes what the model holds.
	 *
	 * @param source element of the row
	 * @param units  unit of bare numbers in the file
	 * @return the text behind the key, empty if there is nothing to write
	 */
	Optional<String> write(EObject source, LengthUnit units);
}
