// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.survey;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;

import wainscribe.survey.SurveyChange;
import wainscribe.survey.SurveyChange.Kind;

/** Says what an import would change, a line for each room. */
final class ChangeWords {

	private ChangeWords() {
	}

	/** Returns one line for each room and the home; one that says so if nothing would change. */
	static List<String> of(List<SurveyChange> changes) {
		if (changes.isEmpty()) {
			return List.of(Messages.ChangeWords_Nothing);
		}
		Map<String, List<SurveyChange>> rooms = changes.stream()
			.collect(Collectors.groupingBy(SurveyChange::room, LinkedHashMap::new, Collectors.toList()));
		return rooms.entrySet().stream().map(entry -> line(entry.getKey(), entry.getValue())).toList();
	}

	private static String line(String room, List<SurveyChange> changes) {
		if (room.isEmpty()) {
			return Messages.ChangeWords_Home;
		}
		boolean isNew = changes.stream().anyMatch(change -> change.kind() == Kind.ADDED && change.element().isEmpty());
		if (isNew) {
			return NLS.bind(Messages.ChangeWords_NewRoom, room);
		}
		return NLS.bind(Messages.ChangeWords_Room, new Object[] { room, count(changes, Kind.ADDED), count(changes, Kind.CHANGED),
			count(changes, Kind.REMOVED) });
	}

	private static String count(List<SurveyChange> changes, Kind kind) {
		return String.valueOf(changes.stream().filter(change -> change.kind() == kind).count());
	}
}
