// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.form;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import wainscribe.model.length.LengthUnit;

/** Several values with {@code |} between them. */
record ListForm(ValueForm item) implements ValueForm {

	@Override
	public List<Object> read(String text, ReadingContext context) throws ValueException {
		List<Object> values = new ArrayList<>();
		for (String part : NoteText.split(text, NoteText.LIST_SEPARATOR)) {
			if (part.isBlank()) {
				throw new ValueException(Messages.ListForm_EmptyItem);
			}
			values.add(item.read(part.strip(), context));
		}
		return values;
	}

	@Override
	public String write(Object value, LengthUnit units) {
		return ((List<?>) value).stream().map(each -> item.write(each, units))
				.collect(Collectors.joining(String.valueOf(NoteText.LIST_SEPARATOR)));
	}
}
