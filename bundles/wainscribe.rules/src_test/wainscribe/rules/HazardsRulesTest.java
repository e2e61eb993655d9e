// SPDX-License-Identifier: EPL-2.0
package wainscribe.rules;

import static wainscribe.rules.RuleCase.asks;
import static wainscribe.rules.RuleCase.fine;
import static wainscribe.rules.RuleCase.wrong;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

import wainscribe.model.FixtureType;
import wainscribe.model.GlossLevel;
import wainscribe.model.Surface;
import wainscribe.model.TrimType;
import wainscribe.model.measure.Measure;

/** Rules of hazards; figures are those of the rules' own sources, see plugin.xml. */
class HazardsRulesTest {

	static List<RuleCase> cases() {
		return List.of(wrong("lead-before-1978", "sanding in a home of 1977", "Old gloss", site -> sanded(site, "US", 1977)),
				fine("lead-before-1978", "sanding in a home of 1978", site -> sanded(site, "US", 1978)),
				asks("lead-before-1978", "year not recorded", "", site -> sanded(site, "US", null)),
				wrong("lead-before-1978", "a base goes", "Base", site -> base(site, false)),
				fine("lead-before-1978", "a base stays", site -> base(site, true)),
				wrong("lead-before-1978", "country not recorded", "Old gloss", site -> sanded(site, null, 1926)),
				fine("lead-before-1978", "another country's rule holds", site -> sanded(site, "UK", 1926)),
				wrong("lead-other-countries", "a home of 1930", "Old gloss", site -> sanded(site, "UK", 1930)),
				wrong("lead-other-countries", "in Canada", "Old gloss", site -> sanded(site, "CA", 1985)),
				fine("lead-other-countries", "a home of 1992", site -> sanded(site, "UK", 1992)),
				wrong("asbestos-texture-us", "texture of 1985", "Popcorn", site -> texture(site, "US", 1985)),
				fine("asbestos-texture-us", "texture of 1986", site -> texture(site, "US", 1986)),
				asks("asbestos-texture-us", "year not recorded", "Popcorn", site -> texture(site, "US", null)),
				wrong("asbestos-uk", "texture of 1999", "Popcorn", site -> texture(site, "UK", 1999)),
				fine("asbestos-uk", "texture of 2000", site -> texture(site, "UK", 2000)),
				wrong("asbestos-no-disturb", "texture is sanded", "Popcorn", site -> scraped(site, 1980)),
				wrong("asbestos-no-disturb", "age not known", "Popcorn", site -> scraped(site, null)),
				fine("asbestos-no-disturb", "a home of 1986", site -> scraped(site, 1986)),
				fine("asbestos-no-disturb", "texture is left alone", site -> texture(site, "US", 1980)),
				wrong("lift-limit", "a mirror of 23.1 kg", "Mirror", site -> mirror(site, "23.1kg")),
				fine("lift-limit", "a mirror of 23 kg", site -> mirror(site, "23kg")),
				wrong("lift-limit", "a mirror of 51 lb", "Mirror", site -> mirror(site, "51lb")));
	}

	@TestFactory
	Stream<DynamicTest> rules() {
		return RuleCase.tests(cases());
	}

	private static void sanded(Site site, String country, Integer built) {
		site.home.setCountry(country);
		site.home.setBuilt(built);
		site.finish(Surface.TRIM, "Old gloss", GlossLevel.G4).setDisturb(true);
	}

	private static void base(Site site, boolean keep) {
		site.home.setBuilt(1926);
		site.trim("A", TrimType.BASE, "Base", 0, 140, 18).setKeep(keep);
	}

	private static void texture(Site site, String country, Integer built) {
		site.home.setCountry(country);
		site.home.setBuilt(built);
		site.finish(Surface.WALLS, "Popcorn", GlossLevel.G1).setTexture(true);
	}

	private static void scraped(Site site, Integer built) {
		texture(site, "US", built);
		site.room.getFinishes().getFirst().setDisturb(true);
	}

	private static void mirror(Site site, String mass) {
		site.fixture("A", FixtureType.MIRROR, "Mirror", 500, 1000, 600, 800).setMass(Measure.parse(mass));
	}
}
