// SPDX-License-Identifier: EPL-2.0
package wainscribe.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.ContributorFactorySimple;
import org.eclipse.core.runtime.IExtensionRegistry;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.core.runtime.spi.RegistryStrategy;
import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

import wainscribe.examples.profile.BeadedBands;
import wainscribe.model.length.Length;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.profile.RegisteredProfiles;
import wainscribe.profile.TrimProfile;

class BeadedBandsTest {

	private static ProfileCatalogue catalogue() {
		return new ProfileCatalogue(List.of(), new BeadedBands().shapes());
	}

	/** On each edge n half circles of a tenth of the width w, two steps of half a bead, the flat and both edges (derived). */
	@Property(tries = 60)
	void girthAndSizeFollowFromTheGeometry(@ForAll @IntRange(min = 30, max = 120) int width, @ForAll @IntRange(min = 1, max = 4) int beads) {
		int thickness = width / 4 + 1;
		TrimProfile band = catalogue().find("example-beaded-band-" + width + "x" + thickness + "-" + beads).orElseThrow();
		double bead = width / 10.0;
		double girth = 2 * (thickness - bead / 2) + beads * Math.PI * bead + bead + width - 2 * beads * bead;
		assertEquals(girth, band.girthMillimetres(), 0.002);
		assertEquals(Length.ofMillimetres(width), band.face());
		assertEquals(Length.ofMillimetres(thickness), band.thickness());
		assertTrue(band.canBeCoped());
	}

	@Test
	void whatCannotBeMadeIsRefusedWithTheReason() {
		assertEquals("example-beaded-band-60x12-5 is out of limits: beads along each edge from 1 to 4",
				catalogue().fault("example-beaded-band-60x12-5").orElseThrow());
		assertTrue(catalogue().fault("example-beaded-band-60x2").orElseThrow().startsWith("example-beaded-band-60x2 cannot be drawn: the"));
	}

	/** As it stands in plugin.xml, beside the profile of a fixed size. */
	@Test
	void theExtensionBringsBoth() throws Exception {
		Object token = new Object();
		List<IStatus> problems = new ArrayList<>();
		IExtensionRegistry registry = RegistryFactory.createRegistry(new RegistryStrategy(null, null), token, token);
		add(registry, token, "wainscribe.profile", "<plugin><extension-point id='profiles' name='Profiles'/></plugin>");
		add(registry, token, "wainscribe.examples", Files.readString(Path.of("plugin.xml")));
		ProfileCatalogue read = new RegisteredProfiles(registry, problems::add).catalogue();
		assertEquals(List.of(), problems);
		assertTrue(read.find("example-reeds-36").isPresent());
		assertEquals("Beaded band (example), 60 mm x 12 mm", read.find("example-beaded-band-60x12").orElseThrow().name());
	}

	private static void add(IExtensionRegistry registry, Object token, String contributor, String xml) {
		registry.addContribution(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)),
				ContributorFactorySimple.createContributor(contributor), false, contributor, null, token);
	}
}
