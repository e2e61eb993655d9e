// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Supplier;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;
import wainscribe.model.length.LengthUnit;
import wainscribe.report.DesignServices;

/** Runs one command line from its words to its exit code. */
public final class CommandRun {

	private final CommandLine commandLine;
	private final Console console;
	private final Consumer<Throwable> failureLog;

	/**
	 * Prepares a run.
	 *
	 * @param services   where profiles, patterns, rules and exporters come from
	 * @param version    the version shown
	 * @param console    where results and progress go
	 * @param failureLog takes errors of the program itself, with their trace
	 */
	CommandRun(DesignServices services, String version, Console console, Consumer<Throwable> failureLog) {
		this.console = Objects.requireNonNull(console);
		this.failureLog = Objects.requireNonNull(failureLog);
		IVersionProvider versions = () -> new String[] { "wainscribe " + version }; //$NON-NLS-1$
		commandLine = new CommandLine(new Wainscribe());
		add(() -> new SurveyCommand(services.patterns(), console));
		add(() -> new LayoutCommand(services, console));
		add(() -> new CheckCommand(services, console));
		add(() -> new CutCommand(services, console));
		add(() -> new FinishCommand(services, console));
		add(() -> new TakeoffCommand(services, console));
		add(() -> new PackCommand(services, console));
		commandLine.getCommandSpec().versionProvider(versions);
		commandLine.getSubcommands().values().forEach(sub -> sub.getCommandSpec().versionProvider(versions));
		commandLine.registerConverter(LengthUnit.class, CommandRun::unit).registerConverter(Path.class, CommandRun::path)
				.setExpandAtFiles(false)
				.setOut(console.out()).setErr(console.err()).setParameterExceptionHandler(usage())
				.setExecutionExceptionHandler(failure());
	}

	/**
	 * Runs a command.
	 *
	 * @param words the words after the name of the program
	 * @return the exit code
	 */
	public int run(String... words) {
		if (words.length == 0) {
			return oneLine("a command is missing; expected one of " + String.join(", ", commandLine.getSubcommands().keySet()) //$NON-NLS-1$ //$NON-NLS-2$
					+ " or --help"); //$NON-NLS-1$
		}
		return commandLine.execute(words);
	}

	private void add(Supplier<Object> command) {
		commandLine.addSubcommand(command.get());
	}

	private static LengthUnit unit(String symbol) {
		try {
			return LengthUnit.ofSymbol(symbol);
		} catch (IllegalArgumentException e) {
			throw new TypeConversionException('"' + symbol + "\": expected in or mm"); //$NON-NLS-1$
		}
	}

	/** An empty name would silently mean the folder the shell is in. */
	private static Path path(String name) {
		if (name.isBlank() || name.indexOf('\0') >= 0) {
			throw new TypeConversionException('"' + name + "\": expected the name of a file or folder"); //$NON-NLS-1$
		}
		return Path.of(name);
	}

	private IParameterExceptionHandler usage() {
		return (exception, words) -> oneLine(
				exception instanceof UnmatchedArgumentException unmatched ? unknown(unmatched) : exception.getMessage());
	}

	private String unknown(UnmatchedArgumentException exception) {
		String word = exception.getUnmatched().get(0);
		CommandLine of = exception.getCommandLine();
		if (of == commandLine && !word.startsWith("-")) { //$NON-NLS-1$
			return "command \"" + word + "\": expected one of " + String.join(", ", commandLine.getSubcommands().keySet()) //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
					+ " or --help"; //$NON-NLS-1$
		}
		List<String> options = of.getCommandSpec().options().stream().map(OptionSpec::longestName).sorted().toList();
		return (word.startsWith("-") ? "option " + word : '"' + word + '"') + ": expected one of " + options; //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private IExecutionExceptionHandler failure() {
		return (exception, line, result) -> {
			if (exception instanceof BadInputException) {
				return oneLine(exception.getMessage());
			}
			if (exception instanceof IOException || exception instanceof UncheckedIOException) {
				return oneLine("a file can't be read or written: " + reason(exception)); //$NON-NLS-1$
			}
			failureLog.accept(exception);
			return oneLine("an error of the program itself, please report it: " + exception); //$NON-NLS-1$
		};
	}

	/** Says what is wrong with a file; the system's own exceptions often name the file only. */
	private static String reason(Exception exception) {
		Throwable cause = exception instanceof UncheckedIOException ? exception.getCause() : exception;
		if (cause instanceof AccessDeniedException) {
			return cause.getMessage() + ": expected the permission to do so"; //$NON-NLS-1$
		}
		if (cause instanceof NoSuchFileException) {
			return cause.getMessage() + ": expected it to be there"; //$NON-NLS-1$
		}
		return cause.getMessage();
	}

	private int oneLine(String message) {
		console.progress(message.replaceAll("\\s*\\R\\s*", " ")); //$NON-NLS-1$ //$NON-NLS-2$
		return ExitCode.BAD_INPUT;
	}

	/** The command of which all others are a part. */
	@Command(name = "wainscribe", mixinStandardHelpOptions = true, description = {
			"Redesigns finished rooms without rebuilding them.",
			"Exit codes: 0 done; 1 findings of error level or an infeasible request; 2 bad usage or input." }, synopsisSubcommandLabel = "COMMAND")
	static final class Wainscribe {
	}
}
