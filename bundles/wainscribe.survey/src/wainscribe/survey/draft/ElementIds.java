// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.draft;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EObject;

import wainscribe.model.Element;
import wainscribe.model.Opening;
import wainscribe.model.Service;
import wainscribe.model.Wall;

/** Ids of elements: readable, the same for the same survey, unique in their file. */
public final class ElementIds {

	private static final Pattern MARKS = Pattern.compile("\\p{M}+"); //$NON-NLS-1$
	private static final Pattern OTHER = Pattern.compile("[^a-z0-9]+"); //$NON-NLS-1$
	private static final int LONGEST = 40;

	private final Set<String> taken = new HashSet<>();
	private final Map<String, Integer> numbers = new HashMap<>();

	private ElementIds() {
	}

	/** Gives every element of a tree that has no id one of its own; ids that are there stay. */
	public static void assign(Element root) {
		ElementIds ids = new ElementIds();
		ids.collect(root);
		ids.give(root);
	}

	/** Gives ids as {@link #assign(Element)}, none of which is among those given. */
	public static void assign(Element root, Set<String> used) {
		ElementIds ids = new ElementIds();
		ids.taken.addAll(used);
		ids.collect(root);
		ids.give(root);
	}

	private void collect(Element root) {
		if (root.getId() != null) {
			taken.add(root.getId());
		}
		root.eAllContents().forEachRemaining(each -> {
			if (each instanceof Element element && element.getId() != null) {
				taken.add(element.getId());
			}
		});
	}

	private void give(Element root) {
		giveOne(root);
		Iterator<EObject> all = root.eAllContents();
		while (all.hasNext()) {
			if (all.next() instanceof Element element) {
				giveOne(element);
			}
		}
	}

	private void giveOne(Element element) {
		if (element.getId() != null) {
			return;
		}
		String wished = slug(kind(element)) + (element.eContainer() instanceof Wall wall ? part(wall.getName()) : "") //$NON-NLS-1$
				+ part(element.getName());
		String id = wished;
		while (!taken.add(id)) {
			id = wished + '-' + numbers.merge(wished, 2, (number, first) -> number + 1);
		}
		element.setId(id);
	}

	private static String kind(Element element) {
		return switch (element) {
			case Opening opening -> opening.getKind().getLiteral();
			case Service service -> service.getKind().getLiteral();
			default -> element.eClass().getName();
		};
	}

	private static String part(String name) {
		String slug = name == null ? "" : slug(name); //$NON-NLS-1$
		return slug.isEmpty() ? "" : '-' + slug; //$NON-NLS-1$
	}

	private static String slug(String name) {
		String plain = MARKS.matcher(Normalizer.normalize(name, Normalizer.Form.NFD)).replaceAll(""); //$NON-NLS-1$
		String slug = OTHER.matcher(plain.toLowerCase(Locale.ROOT)).replaceAll("-"); //$NON-NLS-1$
		String cut = slug.length() > LONGEST ? slug.substring(0, LONGEST) : slug;
		return cut.replaceAll("^-|-$", ""); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
