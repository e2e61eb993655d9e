// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import wainscribe.benchmarks.cutting.CuttingBenchmark;
import wainscribe.benchmarks.rooms.GeneratedHome;
import wainscribe.benchmarks.rooms.RoomGenerator.Density;

/** Runs the benchmarks; started by {@code releng/benchmark}. Exit 0: all figures reached; 1: not; 2: bad usage. */
public final class Benchmarks {

	private static final Set<String> PARTS = Set.of("solver", "scaling", "drag", "colours", "cutting");

	private final Set<String> parts = new TreeSet<>();
	private int rooms = 200;
	private long seed = 1;
	private int jobs = 40;
	private Path sets;
	private Path export;

	private Benchmarks() {
	}

	/** Runs what the arguments ask for, see {@code releng/benchmark --help}. */
	public static void main(String[] arguments) throws IOException {
		Benchmarks benchmarks = new Benchmarks();
		try {
			benchmarks.read(List.of(arguments));
		} catch (IllegalArgumentException e) {
			System.err.println("benchmark: " + e.getMessage());
			System.exit(2);
		}
		System.exit(benchmarks.run() ? 0 : 1);
	}

	private void read(List<String> arguments) {
		for (int i = 0; i < arguments.size(); i++) {
			String argument = arguments.get(i);
			switch (argument) {
			case "--rooms" -> rooms = Math.toIntExact(number(arguments, ++i, argument));
			case "--seed" -> seed = number(arguments, ++i, argument);
			case "--jobs" -> jobs = Math.toIntExact(number(arguments, ++i, argument));
			case "--sets" -> sets = Path.of(value(arguments, ++i, argument));
			case "--export" -> export = Path.of(value(arguments, ++i, argument));
			default -> {
				if (!PARTS.contains(argument)) {
					throw new IllegalArgumentException("\"" + argument + "\": expected solver, scaling, drag, colours, cutting, --rooms, --jobs, --seed, --sets or --export");
				}
				parts.add(argument);
			}
			}
		}
		if (parts.isEmpty() && export == null) {
			parts.addAll(PARTS);
		}
	}

	private static String value(List<String> arguments, int index, String option) {
		if (index >= arguments.size()) {
			throw new IllegalArgumentException(option + ": expected a value after it");
		}
		return arguments.get(index);
	}

	private static long number(List<String> arguments, int index, String option) {
		String text = value(arguments, index, option);
		if (!text.matches("[0-9]{1,9}") || text.matches("0+") && !option.equals("--seed")) {
			throw new IllegalArgumentException(option + " " + text + ": expected a whole number");
		}
		return Long.parseLong(text);
	}

	private boolean run() throws IOException {
		boolean reached = true;
		if (export != null) {
			export();
		}
		if (parts.contains("solver")) {
			Report.heading("Layout solver against a general constraint solver, " + rooms + " rooms from seed " + seed);
			reached &= new SolverBenchmark().run(rooms, seed);
		}
		if (parts.contains("scaling")) {
			Report.heading("A large home against a small one");
			reached &= new ScalingBenchmark().run(seed);
		}
		if (parts.contains("drag")) {
			Report.heading("Solving again during a drag against one repaint of the wall");
			reached &= new DragBenchmark().run(seed);
		}
		if (parts.contains("colours")) {
			Report.heading("The nearest of 100,000 colours against looking at every one");
			reached &= new ColourSearchBenchmark().run(seed);
		}
		if (parts.contains("cutting")) {
			reached &= runCutting();
		}
		return reached;
	}

	private boolean runCutting() throws IOException {
		CuttingBenchmark cutting = new CuttingBenchmark();
		boolean reached = true;
		if (sets != null) {
			Report.heading("Cutting plan: published sets");
			reached &= cutting.sets(sets);
		}
		Report.heading("Cutting plan: houses of 1,500 pieces against 150");
		reached &= cutting.houses(seed);
		Report.heading("Cutting plan against a general solver, " + jobs + " room-size jobs from seed " + seed);
		return reached & cutting.rooms(jobs, seed);
	}

	private void export() throws IOException {
		Files.createDirectories(export);
		for (int i = 0; i < rooms; i++) {
			Files.writeString(export.resolve("room-" + (seed + i) + ".csv"), GeneratedHome.ofOne(seed + i, Density.TYPICAL).survey());
		}
		System.out.println("Surveys of " + rooms + " rooms are in " + export);
	}
}
