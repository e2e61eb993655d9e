// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import wainscribe.model.length.LengthUnit;

/** How one value is written in a survey. What {@link #write} gives {@link #read} reads back as an equal value. */
interface ValueForm {

	/**
	 * Reads a value.
	 *
	 * @param text not empty, without spaces round it
	 * @return the value, never null
	 * @throws ValueException if the text is none
	 */
	Object read(String text, ReadingContext context) throws ValueException;

	/**
	 * Writes a value.
	 *
	 * @param value what {@link #read} gave
	 * @param units unit of bare numbers in the file
	 */
	String write(Object value, LengthUnit units);
}
