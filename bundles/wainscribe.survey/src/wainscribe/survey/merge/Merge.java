// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.merge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiConsumer;
import java.util.function.Predicate;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import wainscribe.model.Element;
import wainscribe.model.WainscribePackage;
import wainscribe.survey.SurveyChange;
import wainscribe.survey.SurveyChange.Kind;

/** Brings elements of a survey into those of a room or home and tells what changed. */
final class Merge {

	private final List<SurveyChange> changes = new ArrayList<>();

	/** Returns what changed so far. */
	List<SurveyChange> changes() {
		return changes;
	}

	/** Notes a change. */
	void changed(Kind kind, String room, String element) {
		SurveyChange change = new SurveyChange(kind, room, element);
		if (!changes.contains(change)) {
			changes.add(change);
		}
	}

	/**
	 * Gives an element the attributes of another but its id; what the other leaves empty is emptied.
	 *
	 * @return whether any was different
	 */
	boolean takeAll(EObject old, EObject found) {
		return take(old, found, value -> true);
	}

	/** Gives an element those attributes of another that are not empty. */
	boolean takeGiven(EObject old, EObject found) {
		return take(old, found, value -> value != null && !(value instanceof List<?> list && list.isEmpty())
				&& !(value instanceof Enumerator word && "unrecorded".equals(word.getLiteral()))); //$NON-NLS-1$
	}

	private static boolean take(EObject old, EObject found, Predicate<Object> isTaken) {
		boolean isChanged = false;
		for (EAttribute attribute : old.eClass().getEAllAttributes()) {
			Object value = found.eGet(attribute);
			if (isKept(attribute) || !isTaken.test(value) || Objects.equals(value, old.eGet(attribute))) {
				continue;
			}
			old.eSet(attribute, value instanceof List<?> list ? new ArrayList<>(list) : value);
			isChanged = true;
		}
		return isChanged;
	}

	/** No survey carries these. */
	private static boolean isKept(EStructuralFeature feature) {
		return feature == WainscribePackage.Literals.ELEMENT__ID || feature == WainscribePackage.Literals.HOME__FORMAT_VERSION
				|| feature == WainscribePackage.Literals.ROOM__FORMAT_VERSION || feature == WainscribePackage.Literals.HOME__ROOM_ORDER
				|| feature == WainscribePackage.Literals.HOME__UNITS;
	}

	/**
	 * Makes a list hold what a survey found, in its order. Elements that are there already stay the same objects.
	 *
	 * @param old    list of the home, updated
	 * @param found  list of the survey; new elements move out of it
	 * @param isKept tells which elements stay though the survey has them not; they go last
	 * @param both   is told of every element that is there already, with the one found
	 * @param where  tells how to name an element in the list of changes
	 */
	<T extends Element> void list(EList<T> old, EList<T> found, Predicate<T> isKept, BiConsumer<T, T> both, Place where) {
		Map<String, T> before = keyed(old);
		Map<String, T> after = keyed(found);
		int index = 0;
		for (Map.Entry<String, T> entry : after.entrySet()) {
			T there = before.remove(entry.getKey());
			if (there == null) {
				T added = entry.getValue();
				clearIds(added);
				old.add(index, added);
				changed(Kind.ADDED, where.room(), where.path(added));
			} else {
				old.move(index, there);
				both.accept(there, entry.getValue());
			}
			index++;
		}
		for (T gone : before.values()) {
			if (!isKept.test(gone)) {
				changed(Kind.REMOVED, where.room(), where.path(gone));
				old.remove(gone);
			}
		}
	}

	private static <T extends Element> Map<String, T> keyed(List<T> list) {
		ElementKey keys = new ElementKey();
		Map<String, T> keyed = new LinkedHashMap<>();
		list.forEach(each -> keyed.put(keys.next(each), each));
		return keyed;
	}

	private static void clearIds(Element added) {
		added.setId(null);
		added.eAllContents().forEachRemaining(each -> {
			if (each instanceof Element element) {
				element.setId(null);
			}
		});
	}
}
