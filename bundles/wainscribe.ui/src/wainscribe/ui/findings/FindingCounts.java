// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.findings;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;

import wainscribe.rules.Finding;
import wainscribe.rules.Severity;

/**
 * How many findings of each weight there are.
 *
 * @param counts only weights that have any, the heaviest first
 */
public record FindingCounts(Map<Severity, Integer> counts) {

	/** Copies the map in the order of weights. */
	public FindingCounts {
		EnumMap<Severity, Integer> copy = new EnumMap<>(Severity.class);
		copy.putAll(counts);
		counts = Collections.unmodifiableMap(copy);
	}

	/** Counts findings. */
	public static FindingCounts of(List<Finding> findings) {
		Map<Severity, Integer> counts = new EnumMap<>(Severity.class);
		findings.forEach(finding -> counts.merge(finding.severity(), 1, Integer::sum));
		return new FindingCounts(counts);
	}

	/** Says them: "2 errors, 1 warning"; that there are none if so. */
	public String words() {
		return counts.isEmpty() ? Messages.FindingCounts_None
			: counts.entrySet().stream().map(entry -> counted(entry.getKey(), entry.getValue())).collect(Collectors.joining(", ")); //$NON-NLS-1$
	}

	/** Says how many there are of one weight. */
	public static String counted(Severity severity, int count) {
		String pattern = switch (severity) {
			case ERROR -> count == 1 ? Messages.FindingCounts_Error : Messages.FindingCounts_Errors;
			case WARNING -> count == 1 ? Messages.FindingCounts_Warning : Messages.FindingCounts_Warnings;
			case ADVICE -> Messages.FindingCounts_Advice;
		};
		return NLS.bind(pattern, String.valueOf(count));
	}
}
