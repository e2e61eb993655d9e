// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.properties;

import java.util.MissingResourceException;
import java.util.ResourceBundle;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * What the model's classes, features and values are called on the screen. Words lie in {@code feature-words.properties}
 * under {@code Class.feature}, or {@code feature} where all classes share them.
 */
public final class FeatureWords {

	private static final String GROUP = ".group"; //$NON-NLS-1$
	private static final String DEFAULT_GROUP = "details"; //$NON-NLS-1$

	private final ResourceBundle words = ResourceBundle.getBundle(FeatureWords.class.getPackageName() + ".feature-words"); //$NON-NLS-1$

	/** Returns the word for a kind of thing, such as Wall. */
	public String of(EClass type) {
		return words.getString(type.getName());
	}

	/** Returns the label of a feature of a class. */
	public String of(EClass type, EStructuralFeature feature) {
		String own = type.getName() + '.' + feature.getName();
		return words.containsKey(own) ? words.getString(own) : words.getString(feature.getName());
	}

	/** Returns the word for one value of an enumeration. */
	public String of(EClassifier type, Enumerator value) {
		String own = type.getName() + '.' + value.getLiteral();
		return words.getString(words.containsKey(own) ? own : value.getLiteral());
	}

	/** Returns the words under a key. */
	String word(String key) {
		return words.getString(key);
	}

	/** Returns the heading under which a feature is listed. */
	String groupOf(EClass type, EStructuralFeature feature) {
		String key = DEFAULT_GROUP;
		for (String candidate : new String[] { feature.getName() + GROUP, type.getName() + '.' + feature.getName() + GROUP }) {
			key = words.containsKey(candidate) ? words.getString(candidate) : key;
		}
		return words.getString("group." + key); //$NON-NLS-1$
	}

	/** Returns the words under a key, or another text where there are none: for ids that extensions bring. */
	String wordOr(String key, String otherwise) {
		try {
			return words.getString(key);
		} catch (MissingResourceException e) {
			return otherwise;
		}
	}
}
