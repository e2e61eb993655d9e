// SPDX-License-Identifier: EPL-2.0
package wainscribe.benchmarks;

import wainscribe.benchmarks.rooms.GeneratedHome;
import wainscribe.layout.EffectiveBrief;
import wainscribe.layout.PatternRoomDesigner;
import wainscribe.layout.pattern.BuiltInPatterns;
import wainscribe.layout.pattern.PatternCatalogue;
import wainscribe.layout.site.RoomSite;
import wainscribe.layout.solver.RoomTask;
import wainscribe.profile.BuiltInProfiles;

/** The suite's services, put together as its programs do, with what is built in and nothing else. */
final class Design {

	private static final PatternCatalogue PATTERNS = BuiltInPatterns.catalogue();

	private Design() {
	}

	/** Returns a designer that gives all advice. */
	static PatternRoomDesigner designer() {
		return new PatternRoomDesigner(PATTERNS, BuiltInProfiles.catalogue());
	}

	/** Returns the layout problem of the first room of a home. */
	static RoomTask task(GeneratedHome home) {
		EffectiveBrief brief = designer().brief(home.home(), home.rooms().getFirst());
		return RoomSite.of(home.home(), home.rooms().getFirst(), brief, PATTERNS.find(brief.pattern()).orElseThrow().pattern()).task();
	}
}
