// SPDX-License-Identifier: EPL-2.0
package wainscribe.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import wainscribe.cutting.solver.BarType;
import wainscribe.cutting.solver.CuttingTask;
import wainscribe.cutting.solver.Packing;
import wainscribe.model.length.Length;

/** The part of a job that one profile makes, as a problem in whole numbers, and packings of it as bars again. */
final class ProfileJob {

	private final String profile;
	private final CuttingJob job;
	private final Money money;
	private final List<BarGroup> groups;
	private final List<ItemGroup> items;
	private final List<PieceDemand> tooLong = new ArrayList<>();
	private final CuttingTask task;

	ProfileJob(String profile, CuttingJob job, Money money) {
		this.profile = profile;
		this.job = job;
		this.money = money;
		groups = new UsefulBars(BarGroup.of(profile, job), profile, job).all();
		Length room = groups.stream().map(BarGroup::length).reduce(Length.ZERO, Length::max).minus(job.endTrim());
		items = items(room);
		task = new CuttingTask(items.stream().mapToLong(item -> item.length().plus(job.kerf()).units()).toArray(),
			items.stream().mapToInt(ItemGroup::quantity).toArray(), barTypes(), job.kerf().units());
	}

	private List<ItemGroup> items(Length room) {
		Map<Length, List<PieceDemand>> byLength = new TreeMap<>(Comparator.reverseOrder());
		for (PieceDemand piece : job.pieces()) {
			if (!piece.profile().equals(profile)) {
				continue;
			}
			if (piece.length().isMoreThan(room)) {
				tooLong.add(piece);
			} else {
				byLength.computeIfAbsent(piece.length(), length -> new ArrayList<>()).add(piece);
			}
		}
		return byLength.entrySet().stream().map(entry -> new ItemGroup(entry.getKey(), entry.getValue())).toList();
	}

	private List<BarType> barTypes() {
		int pieces = items.stream().mapToInt(ItemGroup::quantity).reduce(0, Math::addExact);
		return groups.stream().map(group -> new BarType(group.length().minus(job.endTrim()).plus(job.kerf()).units(),
			money.units(group.price()), (int) Math.min(group.number(), pieces))).toList();
	}

	CuttingTask task() {
		return task;
	}

	/** Returns the bars of a packing, longest and fullest first, bought ones before leftovers. */
	List<Bar> bars(Packing packing) {
		List<ItemGroup.Labels> labels = items.stream().map(ItemGroup::labels).toList();
		List<Packing.Use> uses = packing.uses().stream().sorted(this::compareUses).toList();
		List<Integer> taken = new ArrayList<>();
		groups.forEach(group -> taken.add(0));
		List<Bar> bars = new ArrayList<>();
		for (Packing.Use use : uses) {
			int k = use.pattern().bar();
			for (int t = 0; t < use.times(); t++) {
				bars.add(bar(k, taken.get(k), use.pattern().counts(), labels));
				taken.set(k, taken.get(k) + 1);
			}
		}
		return bars;
	}

	private int compareUses(Packing.Use a, Packing.Use b) {
		int order = Integer.compare(a.pattern().bar(), b.pattern().bar());
		return order != 0 ? order : java.util.Arrays.compare(b.pattern().counts(), a.pattern().counts());
	}

	private Bar bar(int group, int index, int[] counts, List<ItemGroup.Labels> labels) {
		BarGroup from = groups.get(group);
		List<PlacedPiece> pieces = new ArrayList<>();
		Length used = job.endTrim();
		for (int i = 0; i < counts.length; i++) {
			Length length = items.get(i).length();
			for (int c = 0; c < counts[i]; c++) {
				pieces.add(new PlacedPiece(labels.get(i).next(), length));
				used = used.plus(length).plus(job.kerf());
			}
		}
		return new Bar(from.source(), from.label(index), profile, from.length(), from.price(), pieces,
			from.length().minus(used).max(Length.ZERO));
	}

	/** Returns the pieces that a packing leaves out, those too long for any bar first. */
	List<PieceDemand> unplaced(Packing packing) {
		List<PieceDemand> result = new ArrayList<>(tooLong);
		result.sort(ItemGroup.ORDER);
		for (int i = 0; i < items.size(); i++) {
			result.addAll(items.get(i).last(packing.open()[i]));
		}
		return result;
	}

	/** Returns whether no piece is too long for every bar. */
	boolean allFit() {
		return tooLong.isEmpty();
	}
}
