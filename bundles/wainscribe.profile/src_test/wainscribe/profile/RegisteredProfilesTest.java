// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.eclipse.core.runtime.ContributorFactorySimple;
import org.eclipse.core.runtime.IContributor;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.core.runtime.spi.RegistryStrategy;
import org.junit.jupiter.api.Test;

import wainscribe.model.ProfileUse;
import wainscribe.model.length.Length;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionPath;
import wainscribe.profile.shape.BuiltInShapes;
import wainscribe.profile.shape.DrawnShape;
import wainscribe.profile.shape.ProfileShape;
import wainscribe.profile.shape.ShapeSize;
import wainscribe.profile.shape.ShapeSource;

/** Reads catalogues from a registry of its own, without a running platform. */
class RegisteredProfilesTest {

	private final Object token = new Object();
	private final IExtensionRegistry registry = RegistryFactory.createRegistry(new RegistryStrategy(null, null), token, token);
	private final List<IStatus> problems = new ArrayList<>();

	private void add(String contributor, String xml) {
		IContributor by = ContributorFactorySimple.createContributor(contributor);
		registry.addContribution(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)), by, false, contributor, null, token);
	}

	private void addOwn() throws Exception {
		add("wainscribe.profile", Files.readString(Path.of("plugin.xml")));
	}

	private void addSource(String className) {
		add("com.example.trim", "<plugin><extension point='wainscribe.profile.profiles'><profiles class='" + className
				+ "'/></extension></plugin>");
	}

	private ProfileCatalogue read() {
		return new RegisteredProfiles(registry, problems::add).catalogue();
	}

	@Test
	void theBuiltInProfilesComeThroughTheExtensionPoint() throws Exception {
		addOwn();
		assertEquals(BuiltInProfiles.catalogue().all(), read().all());
		assertEquals(List.of(), problems);
	}

	@Test
	void anotherContributorAddsItsProfile() throws Exception {
		addOwn();
		addSource(QuarterRound.class.getName());
		assertEquals("Quarter round", read().find("quarter-round-20").orElseThrow().name());
		assertEquals(List.of(), problems);
	}

	@Test
	void aFailingContributorIsNamedAndTheOthersStay() throws Exception {
		addOwn();
		addSource(Failing.class.getName());
		addSource("com.example.trim.Nowhere");
		addSource("java.lang.Object");
		assertEquals(BuiltInProfiles.catalogue().all().size(), read().all().size());
		assertEquals(3, problems.size());
		for (IStatus problem : problems) {
			assertTrue(problem.getMessage().startsWith("Extension point wainscribe.profile.profiles, contributor com.example.trim: "),
					problem.getMessage());
		}
	}

	@Test
	void aProfileThatCannotBeCutIsLeftOut() throws Exception {
		addOwn();
		addSource(Crossing.class.getName());
		assertTrue(read().find("bow").isEmpty());
		assertTrue(problems.getFirst().getMessage().contains("profile bow was left out: the section crosses or touches itself at 15, 5"));
	}

	@Test
	void aSecondProfileWithAnIdIsReported() throws Exception {
		addOwn();
		addSource(BuiltInProfiles.class.getName());
		assertEquals(BuiltInProfiles.catalogue().all().size(), read().all().size());
		assertEquals(BuiltInProfiles.catalogue().all().size(), problems.size());
	}

	@Test
	void shapesComeThroughTheExtensionPointAndAreDrawnWhenAskedFor() throws Exception {
		addOwn();
		add("com.example.trim", "<plugin><extension point='wainscribe.profile.profiles'><shapes class='" + Slopes.class.getName()
				+ "'/></extension></plugin>");
		assertEquals("Slope, 40 mm x 12 mm", read().find("slope-40x12").orElseThrow().name());
		assertEquals("Ogee, 40 mm x 15 mm", read().find("ogee-40x15").orElseThrow().name());
		assertEquals(new BuiltInShapes().shapes().size() + 1, read().shapes().size());
		assertTrue(read().find("broken-40x12").isEmpty());
		assertTrue(problems.getFirst().getMessage().contains("shape broken was left out: broken-20x9 cannot be drawn: no drawing"),
				problems.getFirst()::getMessage);
	}

	@Test
	void aSecondShapeWithAnIdIsReported() throws Exception {
		addOwn();
		add("com.example.trim", "<plugin><extension point='wainscribe.profile.profiles'><shapes class='"
				+ BuiltInShapes.class.getName() + "'/></extension></plugin>");
		assertEquals(new BuiltInShapes().shapes().size(), read().shapes().size());
		assertTrue(problems.getFirst().getMessage().contains("shape fillet exists already and was left out"));
	}

	/** Brings one sound shape and one that fails. */
	public static final class Slopes implements ShapeSource {
		@Override
		public List<ProfileShape> shapes() {
			return List.of(
					new DrawnShape("slope", "Slope", Set.of(ProfileUse.FRAME), ShapeSize.ofMillimetres(30, 10), null,
							size -> SectionPath.atOrigin().out(size.thickness()).line(size.width(), size.thickness().negated()).section()),
					new DrawnShape("broken", "Broken", Set.of(ProfileUse.FRAME), ShapeSize.ofMillimetres(20, 9), null, size -> {
						throw new IllegalStateException("no drawing");
					}));
		}
	}

	/** Brings one profile, as the example in the schema does. */
	public static final class QuarterRound implements ProfileSource {
		@Override
		public List<TrimProfile> profiles() {
			Length size = Length.ofMillimetres(20);
			ProfileSection section = SectionPath.atOrigin().out(size).round(size, size.negated()).section();
			return List.of(new TrimProfile("quarter-round-20", "Quarter round", Set.of(ProfileUse.CROWN), section));
		}
	}

	/** Fails while it is asked. */
	public static final class Failing implements ProfileSource {
		@Override
		public List<TrimProfile> profiles() {
			throw new IllegalStateException("out of stock");
		}
	}

	/** Brings a section that crosses itself. */
	public static final class Crossing implements ProfileSource {
		@Override
		public List<TrimProfile> profiles() {
			Length ten = Length.ofMillimetres(10);
			ProfileSection bow = SectionPath.atOrigin().out(ten).line(ten.times(3), ten.negated()).out(ten).section();
			return List.of(new TrimProfile("bow", "Bow", Set.of(ProfileUse.FRAME), bow));
		}
	}
}
