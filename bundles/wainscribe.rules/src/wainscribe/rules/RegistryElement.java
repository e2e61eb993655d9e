// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.util.Arrays;
import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;

/** A contribution in the registry of the running platform. */
record RegistryElement(IConfigurationElement element) implements RuleElement {

	@Override
	public String attribute(String name) {
		return element.getAttribute(name);
	}

	@Override
	public List<RuleElement> children(String name) {
		return Arrays.stream(element.getChildren(name)).<RuleElement>map(RegistryElement::new).toList();
	}

	@Override
	public String contributor() {
		return element.getContributor().getName();
	}

	@Override
	public RuleCheck create() {
		try {
			return (RuleCheck) element.createExecutableExtension("class"); //$NON-NLS-1$
		} catch (CoreException | ClassCastException failure) {
			throw new IllegalStateException(
					contributor() + ": class " + attribute("class") + " cannot be used as a check", failure); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		}
	}
}
