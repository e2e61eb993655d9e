// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

import wainscribe.model.Material;
import wainscribe.model.ProfileUse;
import wainscribe.model.length.Length;
import wainscribe.model.storage.HomeFileException;
import wainscribe.profile.BuiltInProfiles;
import wainscribe.profile.FinishState;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.profile.SupplyLength;
import wainscribe.profile.TrimProfile;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionPath;
import wainscribe.profile.section.SectionPoint;

class ProfileFileTest {

	private static final String HEAD = "<profile format=\"1\" id=\"a\" name=\"A\" uses=\"frame\">\n";

	@TempDir
	Path folder;

	@Provide
	Arbitrary<TrimProfile> profiles() {
		Arbitrary<Long> units = Arbitraries.longs().between(-400_000, 900_000);
		Arbitrary<ProfileSection> sections = Combinators.combine(units, units, units, units, units.filter(rise -> rise != 0))
				.as((a, b, c, d, rise) -> new SectionPath(new SectionPoint(new Length(a), new Length(b))).out(Length.ofMillimetres(9))
						.arc(new Length(c + 900_001), new Length(d), new Length(rise))
						.curve(new SectionPoint(new Length(d), new Length(c)), new SectionPoint(new Length(b), new Length(a)),
								new SectionPoint(new Length(800_000), new Length(a)))
						.section());
		Arbitrary<SupplyLength> supply = Combinators.combine(Arbitraries.longs().between(1, 50_000_000),
				Arbitraries.bigDecimals().between(BigDecimal.ZERO, new BigDecimal(9999)).ofScale(2).injectNull(0.3))
				.as((length, price) -> new SupplyLength(new Length(length), price));
		return Combinators.combine(Arbitraries.strings().alpha().ofMinLength(1), Arbitraries.of("Plain", "Rail <1> & \"2\"", "Zierleiste ü 🪵"),
				Arbitraries.of(ProfileUse.class).set().ofMinSize(1), Arbitraries.of(Material.class), Arbitraries.of(FinishState.class), sections,
				supply.list().ofMaxSize(3)).as(TrimProfile::new);
	}

	@Property(tries = 200)
	void whatIsWrittenIsReadBackAsTheSame(@ForAll("profiles") TrimProfile profile) throws IOException {
		Path file = Files.createTempFile("round-trip", ".profile");
		try {
			new ProfileFile(file).write(profile);
			assertEquals(profile, new ProfileFile(file).readAsDrawn());
		} finally {
			Files.delete(file);
		}
	}

	private String fault(String xml) throws IOException {
		Path file = Files.writeString(folder.resolve("bad.profile"), xml);
		String message = assertThrows(HomeFileException.class, () -> new ProfileFile(file).read()).getMessage();
		assertTrue(message.startsWith(file.toString()) && message.lines().count() == 1, message);
		return message.substring(file.toString().length());
	}

	@Test
	void aBrokenPathNamesRowAndColumn() throws IOException {
		assertTrue(fault(HEAD + "<face x='0' y='0'>\n<line x='0' y='ten'/></face></profile>")
				.contains("y is \"ten\"; expected a length such as"));
		assertTrue(fault(HEAD + "<face x='0' y='0'>\n<arc x='20' y='5'/></face></profile>").matches(", row 3, column \\d+: arc without rise"));
		assertTrue(fault(HEAD + "<face x='0' y='0'>\n<spline x='1' y='1'/></face></profile>").contains("element spline; expected line, arc or curve"));
		assertTrue(fault(HEAD + "<face x='0' y='0'>\n<line x='1' y='1'").contains("no well-formed XML; expected a profile"));
		assertTrue(fault("").contains("no well-formed XML"));
		assertTrue(fault("<profile format='2' id='a' name='A' uses='frame'/>").contains("format 2 of a newer suite; expected 1"));
		assertTrue(fault("<profile format='1' id='a' name='A' uses='roof'/>").contains("use roof; expected words of [frame, rail, base"));
		assertTrue(fault("<profile format='1' id='a' name='A' uses='rail' colour='red'/>").contains("attribute colour of profile; expected"));
	}

	@Test
	void anOpenOrCrossingSectionNamesThePoint() throws IOException {
		String open = HEAD + "<face x='0' y='0'><line x='0' y='9'/><line x='30' y='9'/></face><back><line x='30' y='0'/></back></profile>";
		assertEquals(": the section is open at 30, 0: the next line begins at 0, 0", fault(open));
		String bow = HEAD + "<face x='0' y='0'><line x='0' y='10'/><line x='30' y='0'/><line x='30' y='10'/></face>"
				+ "<back><line x='0' y='0'/></back></profile>";
		assertEquals(": the section crosses or touches itself at 15, 5", fault(bow));
		String noBack = HEAD + "<face x='0' y='0'><line x='0' y='9'/><line x='30' y='0'/><line x='0' y='0'/></face></profile>";
		assertTrue(fault(noBack).startsWith(": the back line is missing"));
	}

	@Test
	void documentTypesAndExternalEntitiesAreNotRead() throws IOException {
		Path secret = Files.writeString(folder.resolve("secret.txt"), "frame");
		String message = fault("<!DOCTYPE profile [<!ENTITY s SYSTEM '" + secret.toUri() + "'>]>\n"
				+ "<profile format='1' id='a' name='&s;' uses='frame'/>");
		assertTrue(message.contains("row "), message);
	}

	@Test
	void theProfilesOfAHomeJoinTheCatalogueAndClashesAreSaid() throws IOException {
		ProfileCatalogue suite = BuiltInProfiles.catalogue();
		TrimProfile ogee = suite.find("ogee-32").orElseThrow();
		save("own", new TrimProfile("own-ogee", "Own", ogee.uses(), ogee.section()));
		save("second", new TrimProfile("own-ogee", "Second", ogee.uses(), ogee.section()));
		save("taken", ogee);
		save("sized", new TrimProfile("ogee-40x15", "Sized", EnumSet.of(ProfileUse.RAIL), ogee.section()));
		Files.writeString(folder.resolve("profiles/broken.profile"), "<profile");
		Files.writeString(folder.resolve("profiles/notes.txt"), "no profile");
		HomeProfiles home = HomeProfiles.read(folder, suite);
		assertEquals(List.of("own-ogee"), home.profiles().stream().map(TrimProfile::id).toList());
		assertEquals("Own", home.over(suite).find("own-ogee").orElseThrow().name());
		assertEquals(suite.all().size() + 1, home.over(suite).all().size());
		assertEquals(4, home.problems().size());
		assertTrue(home.problems().get(1).endsWith("second.profile: the id own-ogee is taken by own.profile; expected an id of its own"),
				home.problems()::toString);
		assertTrue(home.problems().get(2).contains("the id ogee-40x15 is taken by the catalogue's Ogee, 40 mm x 15 mm"));
		assertTrue(home.problems().get(3).contains("the id ogee-32 is taken by the catalogue's Ogee, 32 mm x 13 mm"));
	}

	private void save(String name, TrimProfile profile) throws IOException {
		new ProfileFile(folder.resolve("profiles").resolve(name + ".profile")).write(profile);
	}

	@Test
	void aHomeWithoutProfilesHasNoneAndANewFileGetsAFreeName() throws IOException {
		assertEquals(new HomeProfiles(List.of(), List.of()), HomeProfiles.read(folder, BuiltInProfiles.catalogue()));
		Path first = HomeProfiles.fileFor(folder, "../Own rail");
		assertEquals(folder.resolve("profiles/own-rail.profile"), first);
		Files.createDirectories(first.getParent());
		Files.writeString(first, "");
		assertEquals("own-rail-2.profile", HomeProfiles.fileFor(folder, "../Own rail").getFileName().toString());
	}

	/** The example of the page, exactly as it stands there, is a sound profile. */
	@Test
	void theExampleOfThePageIsAProfile() throws IOException {
		String page = Files.readString(Path.of("doc/profile-files.md"));
		String xml = page.substring(page.indexOf("<?xml"), page.indexOf("```\n\n*"));
		TrimProfile profile = new ProfileFile(Files.writeString(folder.resolve("page.profile"), xml)).read();
		assertEquals(Length.ofMillimetres(48), profile.face());
		assertEquals(2, profile.supply().size());
	}
}
