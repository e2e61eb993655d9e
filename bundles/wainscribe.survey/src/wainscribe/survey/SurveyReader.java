// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import wainscribe.model.Home;
import wainscribe.model.WainscribeFactory;
import wainscribe.survey.draft.SurveyCheck;
import wainscribe.survey.table.SurveyTable;
import wainscribe.survey.table.SurveyText;
import wainscribe.survey.table.UnreadableException;

/**
 * Reads a tape-measure CSV into rooms and checks it.
 * <p>
 * All problems are collected, so that a preview can mark every row; a caller that wants only a usable survey adds
 * {@link Survey#orRefuse()}.
 */
public final class SurveyReader {

	private static final String NO_PATTERN = "none"; //$NON-NLS-1$

	private final Set<String> patterns;

	/**
	 * Creates a reader.
	 *
	 * @param patterns ids that a brief may name as its wall pattern; {@code none} need not be among them
	 */
	public SurveyReader(Set<String> patterns) {
		Set<String> all = new TreeSet<>(patterns);
		all.add(NO_PATTERN);
		this.patterns = Set.copyOf(all);
	}

	/**
	 * Reads a file. A file that cannot be read as text gives a survey with that one error.
	 *
	 * @throws IOException if the disk fails
	 */
	public Survey read(Path file) throws IOException {
		String name = file.toString();
		if (Files.isDirectory(file)) {
			return unreadable(name, Messages.SurveyReader_Folder);
		}
		if (!Files.exists(file)) {
			return unreadable(name, Messages.SurveyReader_Missing);
		}
		if (!Files.isReadable(file)) {
			return unreadable(name, Messages.SurveyReader_Unreadable);
		}
		try (InputStream stream = Files.newInputStream(file)) {
			return read(name, stream);
		}
	}

	/**
	 * Reads a survey from a stream, which is left open.
	 *
	 * @param file how messages name it
	 * @throws IOException if reading fails
	 */
	public Survey read(String file, InputStream stream) throws IOException {
		List<SurveyProblem> problems = new ArrayList<>();
		SurveyTable table = new SurveyTable(problems);
		SurveyProblem stop = null;
		try {
			table.read(SurveyText.read(stream));
		} catch (UnreadableException e) {
			stop = e.problem();
		}
		if (stop != null) {
			problems.add(stop);
			return new Survey(file, table.units(), table.rows(), emptyHome(), List.of(), problems);
		}
		SurveyCheck check = SurveyCheck.of(table.rows(), table.units(), patterns, problems);
		return new Survey(file, table.units(), table.rows(), check.home(), check.rooms(), check.problems());
	}

	private static Survey unreadable(String file, String message) {
		SurveyProblem problem = new SurveyProblem(0, "", SurveyProblem.Severity.ERROR, message); //$NON-NLS-1$
		return new Survey(file, null, List.of(), emptyHome(), List.of(), List.of(problem));
	}

	private static Home emptyHome() {
		return WainscribeFactory.eINSTANCE.createHome();
	}
}
