// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Turns contributions into descriptors; the only place that knows the attributes of the extension point. */
final class RuleReader {

	private static final String SEPARATOR = "[,\\s]+"; //$NON-NLS-1$

	private RuleReader() {
	}

	/**
	 * Reads one contribution. A faulty one becomes a rule that reports its fault when it is run, so that neither it nor the
	 * others are lost.
	 */
	static RuleDescriptor read(RuleElement element) {
		try {
			return new RuleDescriptor(required(element, "id"), required(element, "area"), //$NON-NLS-1$ //$NON-NLS-2$
					Severity.ofWord(required(element, "severity")), required(element, "name"), //$NON-NLS-1$ //$NON-NLS-2$
					required(element, "statement"), required(element, "source"), //$NON-NLS-1$ //$NON-NLS-2$
					SourceStatus.ofWord(required(element, "status")), words(element, "profiles", RuleDescriptor.ANYWHERE), //$NON-NLS-1$ //$NON-NLS-2$
					element.children("option").stream().map(RuleReader::option).toList(), //$NON-NLS-1$
					words(element, "reads", ""), element.contributor(), once(element)); //$NON-NLS-1$ //$NON-NLS-2$
		} catch (IllegalArgumentException fault) {
			return faulty(element, fault);
		}
	}

	private static RuleOption option(RuleElement element) {
		String metric = required(element, "default"); //$NON-NLS-1$
		String inch = element.attribute("inch"); //$NON-NLS-1$
		return new RuleOption(required(element, "key"), required(element, "label"), metric, inch == null ? metric : inch); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** Checks keep no state, so one object serves all runs; it is made when first needed. */
	private static Supplier<RuleCheck> once(RuleElement element) {
		required(element, "class"); //$NON-NLS-1$
		return new Supplier<>() {
			private RuleCheck check;

			@Override
			public synchronized RuleCheck get() {
				if (check == null) {
					check = element.create();
				}
				return check;
			}
		};
	}

	private static RuleDescriptor faulty(RuleElement element, IllegalArgumentException fault) {
		String id = element.attribute("id"); //$NON-NLS-1$
		String shown = id == null ? element.contributor() + ".unnamed" : id; //$NON-NLS-1$
		return new RuleDescriptor(shown, "", Severity.WARNING, shown, "", element.contributor(), //$NON-NLS-1$ //$NON-NLS-2$
				SourceStatus.COMMON_PRACTICE, Set.of(RuleDescriptor.ANYWHERE), List.of(), Set.of(), element.contributor(), () -> {
					throw new IllegalStateException(fault.getMessage(), fault);
				});
	}

	private static Set<String> words(RuleElement element, String attribute, String otherwise) {
		String text = element.attribute(attribute);
		return Arrays.stream((text == null ? otherwise : text).strip().split(SEPARATOR)).filter(word -> !word.isEmpty())
				.collect(Collectors.toSet());
	}

	private static String required(RuleElement element, String attribute) {
		String text = element.attribute(attribute);
		if (text == null || text.isBlank()) {
			throw new IllegalArgumentException("extension of " + RuleCatalogue.EXTENSION_POINT + ": attribute " + attribute //$NON-NLS-1$ //$NON-NLS-2$
					+ " is missing"); //$NON-NLS-1$
		}
		return text;
	}
}
