// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import wainscribe.model.length.Length;
import wainscribe.profile.section.ArcSegment;
import wainscribe.profile.section.CurveSegment;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionCheck;
import wainscribe.profile.section.SectionPath;
import wainscribe.profile.section.StraightSegment;

/** Sections of known measure, drawn in both forms. */
class SectionImportTest {

	@TempDir
	Path folder;

	private static Length mm(long millimetres) {
		return Length.ofMillimetres(millimetres);
	}

	/** A bead of 20 mm on edges of 4 mm; drawn with the wall below. */
	private static final ProfileSection BEAD = SectionPath.atOrigin().out(mm(4)).halfRound(mm(20)).out(mm(-4)).section();
	/** A quarter round on an edge; tells up from down. */
	private static final ProfileSection OVOLO = SectionPath.atOrigin().out(mm(12)).along(mm(5)).round(mm(10), mm(-10)).out(mm(-2)).section();

	private ProfileSection svg(String d, double unit) throws IOException {
		Path file = Files.writeString(folder.resolve("s.svg"), "<svg xmlns='http://www.w3.org/2000/svg'>\n<path d='" + d + "'/></svg>");
		return new SectionImport(unit).read(file);
	}

	private ProfileSection dxf(String entities, double unit) throws IOException {
		Path file = Files.writeString(folder.resolve("s.dxf"),
				("0 SECTION 2 ENTITIES " + entities + " 0 ENDSEC 0 EOF").strip().replaceAll("\\s+", "\n"));
		return new SectionImport(unit).read(file);
	}

	private static void same(ProfileSection expected, ProfileSection drawn) {
		assertEquals(List.of(), new SectionCheck().faults(drawn));
		assertEquals(expected.box(), drawn.box());
		assertEquals(expected.girthMillimetres(), drawn.girthMillimetres(), 0.001);
		assertEquals(expected.areaSquareMillimetres(), drawn.areaSquareMillimetres(), 0.005);
	}

	@Test
	void anSvgPathInAbsoluteAndRelativeFormIsTheSameSection() throws IOException {
		assertEquals(BEAD, svg("M0 14 V10 A10 10 0 0 1 20 10 V14 Z", 1));
		assertEquals(BEAD, svg("m0,14v-4a10,10,0,0120,0v4z", 1));
		assertEquals(BEAD, svg("M20 14 L0 14 0 10 A10 10 0 1 1 20 10 L20,14", 1));
	}

	@Test
	void theUnitIsTheOneAsked() throws IOException {
		assertEquals(BEAD, svg("M0 1.4 V1 A1 1 0 0 1 2 1 V1.4 Z", 10));
		assertEquals(Length.ofInches(3, 2), svg("M0 0H1.5V-.5H0Z", 25.4).box().width());
	}

	@Test
	void theLongestStraightSideAtTheEdgeLiesOnTheWallAndUpStaysUp() throws IOException {
		assertEquals(OVOLO, svg("M0 12 V0 H5 A10 10 0 0 1 15 10 V12 Z", 1));
		// The wall at the left, seen upright: the thick edge is below, SVG counts downwards.
		assertEquals(OVOLO, svg("M0 15 H12 V10 A10 10 0 0 0 2 0 H0 Z", 1));
		// The wall at the right, the thick edge below.
		assertEquals(OVOLO, svg("M12 15 H0 V10 A10 10 0 0 1 10 0 H12 Z", 1));
	}

	@Test
	void curvesStayCurves() throws IOException {
		ProfileSection cubic = svg("M0 20 V10 C5 0 10 0 15 10 S25 20 30 10 V20 Z", 1);
		assertEquals(2, cubic.face().stream().filter(CurveSegment.class::isInstance).count());
		ProfileSection quadratic = svg("M0 20 V10 Q7.5 0 15 10 T30 10 V20 Z", 1);
		assertEquals(2, quadratic.face().stream().filter(CurveSegment.class::isInstance).count());
		// A parabola cuts off two thirds of the triangle of its handles (Archimedes); one adds what the other takes.
		assertEquals(300, quadratic.areaSquareMillimetres(), 0.001);
	}

	/** Half an ellipse: area pi a b / 2; its two Bezier quarters are less than 0.03 % off. */
	@Test
	void anEllipticArcBecomesCurves() throws IOException {
		ProfileSection half = svg("M0 20 A15 10 0 0 1 30 20 Z", 1);
		assertEquals(Math.PI * 15 * 10 / 2, half.areaSquareMillimetres(), 0.1);
		assertEquals(mm(10), half.box().projection());
		ProfileSection turned = svg("M0 20 A10 15 90 0 1 30 20 Z", 1);
		assertEquals(half.areaSquareMillimetres(), turned.areaSquareMillimetres(), 0.01);
	}

	@Test
	void dxfPolylinesLinesAndArcsAreTheSameSection() throws IOException {
		same(BEAD, dxf("0 LWPOLYLINE 90 4 70 1 10 0 20 0 10 0 20 4 42 -1 10 20 20 4 10 20 20 0", 1));
		same(BEAD, dxf("0 POLYLINE 66 1 70 1 0 VERTEX 10 0 20 0 0 VERTEX 10 0 20 4 42 -1 0 VERTEX 10 20 20 4 0 VERTEX 10 20 20 0 0 SEQEND", 1));
		same(BEAD, dxf("0 LINE 10 0 20 0 11 0 21 4 0 ARC 10 10 20 4 40 10 50 0 51 180 0 LINE 10 20 20 0 11 20 21 4 0 LINE 10 20 20 0 11 0 21 0", 1));
		same(OVOLO, dxf("0 LINE 10 0 20 0 11 0 21 .12 0 LINE 10 0 20 .12 11 .05 21 .12 0 ARC 10 .05 20 .02 40 .1 50 0 51 90 "
				+ "0 LINE 10 .15 20 0 11 .15 21 .02 0 LINE 10 0 20 0 11 .15 21 0 0 TEXT 1 bead", 100));
		assertTrue(dxf("0 LWPOLYLINE 70 1 10 0 20 0 10 0 20 4 42 -1 10 20 20 4 10 20 20 0", 1).face().get(1) instanceof ArcSegment);
	}

	@Test
	void endsThatMissByAHairAreJoined() throws IOException {
		ProfileSection flat = dxf("0 LINE 10 0 20 0 11 0 21 9 0 LINE 10 0.004 20 9 11 30 21 9.003 0 LINE 10 30 20 9 11 30 21 0 "
				+ "0 LINE 10 30 20 0.01 11 0 21 0.01", 1);
		assertEquals(null, new SectionCheck().firstFault(flat).filter(fault -> fault.contains("open")).orElse(null));
		assertEquals(3, flat.face().stream().filter(StraightSegment.class::isInstance).count() + flat.back().size() - 1, "four sides");
	}

	private static String fault(SectionReading reading) {
		String message = assertThrows(SectionImportException.class, reading::read).getMessage();
		assertEquals(1, message.lines().count());
		return message.substring(message.indexOf(".", message.lastIndexOf('/')) + 4);
	}

	/** Reads something that may fail. */
	private interface SectionReading {
		ProfileSection read() throws IOException;
	}

	@Test
	void aBrokenSvgIsSaidInOneLine() {
		assertEquals(", row 2: path, character 5: \"x\"; expected one of M L H V C S Q T A Z", fault(() -> svg("M0 1x", 1)));
		assertEquals(", row 2: path, character 9: the end; expected a number", fault(() -> svg("M0 0 L10", 1)));
		assertEquals(", row 2: path, character 1: \"L\"; expected M first", fault(() -> svg("L1 1", 1)));
		assertEquals(", row 2: path, character 17: \"2\"; expected a flag, 0 or 1", fault(() -> svg("M0 0 A10 10 0 0 2 9 9", 1)));
		assertTrue(fault(() -> svg("M0 0H9V9", 1)).contains("the outline is open at 9.0, 9.0; expected it to end where it began"));
		assertTrue(fault(() -> svg("M0 0H9V9Z M1 1H2V2Z", 1)).contains("a second outline; expected one closed outline"));
		assertTrue(fault(() -> svg("", 1)).contains("nothing drawn"));
		assertTrue(fault(() -> svg("M0 0H1e12V9Z", 1)).contains("more than 10 m away"));
	}

	private static void contains(String expected, String message) {
		assertTrue(message.contains(expected), message);
	}

	private ProfileSection file(String name, String text) throws IOException {
		return new SectionImport(1).read(Files.writeString(folder.resolve(name), text));
	}

	@Test
	void otherFilesAreRefusedInOneLine() {
		contains("a transform; expected", fault(() -> file("s.svg", "<svg><g transform='scale(2)'><path d='M0 0H9V9Z'/></g></svg>")));
		contains("a second path", fault(() -> file("s.svg", "<svg><path d='M0 0H9V9Z'/><path d='M0 0H9V9Z'/></svg>")));
		contains("no well-formed XML; expected an SVG file", fault(() -> file("s.svg", "<svg><path")));
		contains("no path; expected one closed outline", fault(() -> file("s.svg", "<svg/>")));
		contains("expected a file that ends in .svg or .dxf", fault(() -> file("s.txt", "")));
		assertTrue(fault(() -> new SectionImport(1).read(folder.resolve("none.dxf"))).contains("no such file; expected"));
	}

	@Test
	void aBrokenDxfNamesRowAndEntity() {
		assertEquals(", row 5: SPLINE; expected LWPOLYLINE, POLYLINE, LINE or ARC: explode or convert it first", fault(() -> dxf("0 SPLINE 8 0", 1)));
		assertEquals(", row 5: LINE: no group 21; the entity is not complete", fault(() -> dxf("0 LINE 10 0 20 0 11 5", 1)));
		assertEquals(", row 5: LINE: \"five\" in row 8; expected a number", fault(() -> dxf("0 LINE 10 five 20 0 11 5 21 5", 1)));
		assertTrue(fault(() -> dxf("0 LINE 10 0 20 0 11 0 21 9 0 LINE 10 0 20 9 11 30 21 9", 1))
				.contains("the outline is open at 30.000 mm, 9.000 mm; expected a line or an arc from there"));
		assertTrue(fault(() -> dxf("0 LWPOLYLINE 70 1 10 0 20 0 10 9 20 0 10 9 20 9 0 LINE 10 50 20 50 11 60 21 60", 1))
				.contains("row 21: LINE apart from the outline"));
		contains("row 1: \"hello\"; expected a group code", fault(() -> file("s.dxf", "hello\nworld\n")));
		contains("the section ENTITIES does not end", fault(() -> file("s.dxf", "0\nSECTION\n2\nENTITIES\n0\nLINE\n")));
		assertTrue(fault(() -> dxf("", 1)).contains("no LWPOLYLINE, POLYLINE, LINE or ARC"));
	}
}
