// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;

/**
 * Where the rules come from: extensions of {@value #EXTENSION_POINT}, read from the running platform or straight from the
 * plugin.xml of a bundle, so that tests without a platform run the very rules that are shipped.
 */
public final class RuleCatalogue {

	/** Id of the extension point. */
	public static final String EXTENSION_POINT = "wainscribe.rules.rules"; //$NON-NLS-1$

	static final String RULE = "rule"; //$NON-NLS-1$

	private RuleCatalogue() {
	}

	/**
	 * Reads all contributed rules; of two with one id the one of the earlier contributor stays, the built-in ones first.
	 *
	 * @param registry the registry of the platform
	 * @return descriptors whose checks are made when first run
	 */
	public static List<RuleDescriptor> of(IExtensionRegistry registry) {
		List<RuleDescriptor> builtIn = new ArrayList<>();
		List<RuleDescriptor> others = new ArrayList<>();
		for (IConfigurationElement element : registry.getConfigurationElementsFor(EXTENSION_POINT)) {
			if (RULE.equals(element.getName())) {
				RuleDescriptor rule = RuleReader.read(new RegistryElement(element));
				(EXTENSION_POINT.startsWith(rule.contributor()) ? builtIn : others).add(rule);
			}
		}
		builtIn.addAll(others);
		return eachOnce(builtIn);
	}

	/**
	 * Reads the rules that one bundle contributes, without a platform.
	 *
	 * @param bundle folder with its plugin.xml and the texts in {@code OSGI-INF/l10n/bundle.properties}
	 * @param loader finds the check classes
	 * @return descriptors in the order of the file
	 * @throws IOException if a file cannot be read or is no XML
	 */
	public static List<RuleDescriptor> of(Path bundle, ClassLoader loader) throws IOException {
		return eachOnce(PluginFile.rules(bundle, loader).stream().map(RuleReader::read).toList());
	}

	private static List<RuleDescriptor> eachOnce(Collection<RuleDescriptor> rules) {
		Map<String, RuleDescriptor> byId = new LinkedHashMap<>();
		rules.forEach(rule -> byId.putIfAbsent(rule.id(), rule));
		return List.copyOf(byId.values());
	}
}
