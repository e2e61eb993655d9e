// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli.json;

import static wainscribe.cli.json.JsonValues.array;

import com.google.gson.JsonObject;

import java.util.Collection;

import wainscribe.rules.Finding;

/** Findings as the outside contract of the command {@code check} writes them. */
public final class FindingsJson {

	private FindingsJson() {
	}

	/** Returns {@code {findings: [...]}}. */
	public static JsonObject of(Collection<Finding> findings) {
		JsonObject result = new JsonObject();
		result.add("findings", array(findings, FindingsJson::finding)); //$NON-NLS-1$
		return result;
	}

	private static JsonObject finding(Finding finding) {
		JsonObject object = new JsonObject();
		object.addProperty("rule", finding.rule()); //$NON-NLS-1$
		object.addProperty("severity", finding.severity().word()); //$NON-NLS-1$
		object.addProperty("room", finding.room()); //$NON-NLS-1$
		object.addProperty("wall", finding.wall()); //$NON-NLS-1$
		object.addProperty("element", finding.element()); //$NON-NLS-1$
		object.addProperty("message", finding.message()); //$NON-NLS-1$
		object.addProperty("source", finding.source()); //$NON-NLS-1$
		object.addProperty("fixable", finding.fixable()); //$NON-NLS-1$
		return object;
	}
}
