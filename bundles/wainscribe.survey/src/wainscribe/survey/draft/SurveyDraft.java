// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.draft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;

import wainscribe.model.Home;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.Room;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;
import wainscribe.survey.QuotedText;
import wainscribe.survey.SurveyColumn;
import wainscribe.survey.SurveyProblem;
import wainscribe.survey.SurveyProblem.Severity;
import wainscribe.survey.SurveyRow;

/** A survey while it is read: what is there so far, from which rows it came, and what was wrong. */
final class SurveyDraft {

	private final Home home = WainscribeFactory.eINSTANCE.createHome();
	private final Map<String, Room> rooms = new LinkedHashMap<>();
	private final Map<EObject, SurveyRow> origins = new IdentityHashMap<>();
	private final Map<SurveyRow, Boolean> refused = new IdentityHashMap<>();
	private final List<SurveyProblem> problems;
	private final Set<SurveyProblem> seen = new HashSet<>();
	private final LengthUnit units;
	private final Set<String> patterns;

	SurveyDraft(LengthUnit units, Set<String> patterns, List<SurveyProblem> problems) {
		this.units = units;
		this.patterns = Objects.requireNonNull(patterns);
		this.problems = Objects.requireNonNull(problems);
	}

	Home home() {
		return home;
	}

	Map<String, Room> rooms() {
		return rooms;
	}

	LengthUnit units() {
		return units;
	}

	Set<String> patterns() {
		return patterns;
	}

	/** Remembers the row an element came from. */
	void came(EObject element, SurveyRow row) {
		origins.put(element, row);
	}

	/** Returns the row an element came from. */
	SurveyRow rowOf(EObject element) {
		return origins.get(element);
	}

	/** Tells whether nothing was refused in the row of an element, so that its numbers can be checked further. */
	boolean isClean(EObject element) {
		SurveyRow row = origins.get(element);
		return row != null && !refused.containsKey(row);
	}

	/** Records an error in a cell; the message begins with what stands in the cell. */
	void refuse(SurveyRow row, SurveyColumn column, String expected) {
		refuseText(row, column, QuotedText.of(row.cell(column)) + ": " + expected); //$NON-NLS-1$
	}

	/** Records an error in a cell with a message of its own. */
	void refuseText(SurveyRow row, SurveyColumn column, String message) {
		refused.put(row, Boolean.TRUE);
		add(row, column, Severity.ERROR, message);
	}

	/** Records that a cell is doubtful. */
	void doubt(SurveyRow row, SurveyColumn column, String message) {
		add(row, column, Severity.WARNING, QuotedText.of(row.cell(column)) + ": " + message); //$NON-NLS-1$
	}

	/** Records a problem, once: a row for the whole home is taken in for every room. */
	void add(SurveyRow row, SurveyColumn column, Severity severity, String message) {
		SurveyProblem problem = new SurveyProblem(row.row(), column.title(), severity, message);
		if (seen.add(problem)) {
			problems.add(problem);
		}
	}

	/** Returns all problems in the order of the file. */
	List<SurveyProblem> problems() {
		List<SurveyProblem> sorted = new ArrayList<>(problems);
		sorted.sort(Comparator.comparingInt(SurveyProblem::row));
		return sorted;
	}

	/** Returns a length as the surveyor reads it. */
	String shown(Length length) {
		return LengthFormat.asShown(length, units == null ? LengthUnit.MILLIMETRE : units);
	}
}
