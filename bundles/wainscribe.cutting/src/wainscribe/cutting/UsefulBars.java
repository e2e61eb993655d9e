// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.util.List;

import wainscribe.model.length.Length;

/**
 * Leaves out bars that no best plan needs: those too short for every piece, and those for which a longer or equal bar that costs
 * no more can be had in any number. Such a bar holds the same pieces and leaves no less.
 */
final class UsefulBars {

	private final List<BarGroup> groups;
	private final Length shortest;

	UsefulBars(List<BarGroup> groups, String profile, CuttingJob job) {
		this.groups = groups;
		shortest = job.pieces().stream().filter(piece -> piece.profile().equals(profile)).map(PieceDemand::length)
			.min(Length::compareTo).map(length -> length.plus(job.endTrim())).orElse(Length.ZERO);
	}

	List<BarGroup> all() {
		return groups.stream().filter(group -> group.number() > 0 && !group.length().isLessThan(shortest))
			.filter(group -> groups.stream().noneMatch(other -> dominates(other, group))).toList();
	}

	private boolean dominates(BarGroup other, BarGroup group) {
		return other != group && other.number() == BarGroup.ANY_NUMBER && !other.length().isLessThan(group.length())
			&& other.price().compareTo(group.price()) <= 0;
	}
}
