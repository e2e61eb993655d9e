// SPDX-License-Identifier: EPL-2.0
package wainscribe.commands;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Changes a model and remembers how to take each change back, with the place of what was added or removed. */
public final class ChangeLog {

	private final List<Change> changes = new ArrayList<>();

	ChangeLog() {
	}

	/**
	 * Sets a single-valued feature, or all values of a many-valued attribute.
	 *
	 * @param owner   the object changed
	 * @param feature one of its features
	 * @param value   the new value, a list for a many-valued one; null leaves the feature unset
	 */
	public void set(EObject owner, EStructuralFeature feature, Object value) {
		Object old = owner.eIsSet(feature) ? copied(owner.eGet(feature)) : null;
		Object wanted = copied(value);
		apply(new Change(() -> assign(owner, feature, wanted), () -> assign(owner, feature, old)));
	}

	/**
	 * Adds an object at the end of a list.
	 *
	 * @param owner   the object whose list it is
	 * @param feature a many-valued feature
	 * @param value   the object added
	 */
	public void add(EObject owner, EStructuralFeature feature, Object value) {
		insert(owner, feature, list(owner, feature).size(), value);
	}

	/**
	 * Adds an object at a place of a list.
	 *
	 * @param owner   the object whose list it is
	 * @param feature a many-valued feature
	 * @param index   the place, from 0 to the size of the list
	 * @param value   the object added
	 */
	public void insert(EObject owner, EStructuralFeature feature, int index, Object value) {
		EList<Object> list = list(owner, feature);
		apply(new Change(() -> list.add(index, value), () -> list.remove(index)));
	}

	/**
	 * Removes an object from a list.
	 *
	 * @param owner   the object whose list it is
	 * @param feature a many-valued feature
	 * @param value   an object of the list
	 */
	public void remove(EObject owner, EStructuralFeature feature, Object value) {
		EList<Object> list = list(owner, feature);
		int index = list.indexOf(value);
		apply(new Change(() -> list.remove(index), () -> list.add(index, value)));
	}

	void revert() {
		for (Change change : changes.reversed()) {
			change.back().run();
		}
	}

	void repeat() {
		changes.forEach(change -> change.forth().run());
	}

	private void apply(Change change) {
		change.forth().run();
		changes.add(change);
	}

	private static void assign(EObject owner, EStructuralFeature feature, Object value) {
		if (value == null) {
			owner.eUnset(feature);
		} else {
			owner.eSet(feature, value);
		}
	}

	private static Object copied(Object value) {
		return value instanceof List<?> values ? List.copyOf(values) : value;
	}

	@SuppressWarnings("unchecked")
	private static EList<Object> list(EObject owner, EStructuralFeature feature) {
		return (EList<Object>) owner.eGet(feature);
	}

	private record Change(Runnable forth, Runnable back) {
	}
}
