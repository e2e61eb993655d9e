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
		assertTrue(problems.getFirst().getMessage().contains("profile bow was left out: the section crosses itself"));
	}

	@Test
	void aSecondProfileWithAnIdIsReported() throws Exception {
		addOwn();
		addSource(BuiltInProfiles.class.getName());
		assertEquals(BuiltInProfiles.catalogue().all().size(), read().all().size());
		assertEquals(BuiltInProfiles.catalogue().all().size(), problems.size());
	}

	/** Brings one profile, as the example in the schema does. */
	public static final class QuarterRound implements ProfileSource {
		@Override
		public List<TrimProfile> profiles() {
			ProfileSection section = new SectionPath(0, 0).line(0, 20).leaving(20, -20).section();
			Length size = Length.ofMillimetres(20);
			return List.of(new ShapedProfile("quarter-round-20", "Quarter round", Set.of(ProfileUse.CROWN), size, size, section));
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
			ProfileSection bow = new SectionPath(0, 0).line(0, 10).line(30, -10).line(0, 10).section();
			return List.of(new ShapedProfile("bow", "Bow", Set.of(ProfileUse.FRAME), Length.ofMillimetres(30),
					Length.ofMillimetres(10), bow));
		}
	}
}
