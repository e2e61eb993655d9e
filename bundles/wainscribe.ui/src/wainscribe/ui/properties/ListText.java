// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Several values in one line, with a comma or a bar between them.
 *
 * @param <T>  the kind of one value
 * @param each reads and writes one of them
 */
record ListText<T>(ValueText<T> each) implements ValueText<List<T>> {

	private static final String BETWEEN = ", "; //$NON-NLS-1$

	@Override
	public String shown(List<T> values) {
		return joined(values, each::shown);
	}

	@Override
	public String typed(List<T> values) {
		return joined(values, each::typed);
	}

	@Override
	public List<T> read(String text) {
		return Arrays.stream(text.split("[,|]")).filter(part -> !part.isBlank()).map(each::read).toList(); //$NON-NLS-1$
	}

	private String joined(List<T> values, Function<T, String> writer) {
		return values.stream().map(writer).collect(Collectors.joining(BETWEEN));
	}
}
