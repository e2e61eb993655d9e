// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;

import wainscribe.drawing.dxf.DxfExporter;

/** Reads the file back by group codes (DXF Reference, release 12: a code on one line, its value on the next). */
class DxfExporterTest {

	private record Pair(int code, String value) {
	}

	/** An entity or table entry: the pairs from one code 0 to the next. */
	private record Item(String type, List<Pair> pairs) {
		String first(int code) {
			return pairs.stream().filter(pair -> pair.code() == code).findFirst().orElseThrow().value();
		}

		double number(int code) {
			return Double.parseDouble(first(code));
		}
	}

	private static List<Item> items(byte[] bytes) {
		String[] lines = new String(bytes, StandardCharsets.US_ASCII).split("\r\n");
		assertEquals(0, lines.length % 2);
		List<Item> items = new ArrayList<>();
		for (int i = 0; i < lines.length; i += 2) {
			int code = Integer.parseInt(lines[i]);
			if (code == 0) {
				items.add(new Item(lines[i + 1], new ArrayList<>()));
			} else if (!items.isEmpty()) {
				items.getLast().pairs().add(new Pair(code, lines[i + 1]));
			}
		}
		return items;
	}

	private static List<Item> items(String wall) throws Exception {
		return items(Exported.bytes(new DxfExporter(), wall));
	}

	@Test
	void sectionsOpenAndCloseAndTheFileEnds() throws Exception {
		List<Item> items = items("A");
		assertEquals(List.of("HEADER", "TABLES", "BLOCKS", "ENTITIES"),
				items.stream().filter(item -> item.type().equals("SECTION")).map(item -> item.first(2)).toList());
		assertEquals(4, items.stream().filter(item -> item.type().equals("ENDSEC")).count());
		assertEquals("EOF", items.getLast().type());
		assertTrue(items.getFirst().pairs().containsAll(List.of(new Pair(1, "AC1009"), new Pair(9, "$INSUNITS"))));
	}

	@Test
	void everyEntityLiesOnADeclaredLayer() throws Exception {
		List<Item> items = items("A");
		Set<String> declared = new TreeSet<>();
		items.stream().filter(item -> item.type().equals("LAYER")).forEach(item -> declared.add(item.first(2)));
		Set<String> used = new TreeSet<>();
		items.stream().filter(item -> Set.of("LINE", "ARC", "POLYLINE", "VERTEX", "TEXT").contains(item.type()))
				.forEach(item -> used.add(item.first(8)));
		assertTrue(declared.containsAll(used));
		assertTrue(used.containsAll(Set.of("WALL", "FRAME", "RAIL", "BASE", "OPENING", "FIXTURE", "DIMENSION", "TEXT")));
	}

	@Test
	void aFrameMeasuresTrueInMillimetres() throws Exception {
		List<Item> corners = items("A").stream().filter(item -> item.type().equals("VERTEX") && item.first(8).equals("FRAME"))
				.toList();
		assertEquals(100, corners.stream().mapToDouble(item -> item.number(10)).min().orElseThrow());
		assertEquals(1100, corners.stream().mapToDouble(item -> item.number(10)).max().orElseThrow());
		assertEquals(200, corners.stream().mapToDouble(item -> item.number(20)).min().orElseThrow());
		assertEquals(700, corners.stream().mapToDouble(item -> item.number(20)).max().orElseThrow());
	}

	@Test
	void roundedCornersKeepTheirBulge() throws Exception {
		// A quarter circle has the bulge tan(90 / 4 degrees) (DXF Reference, group code 42).
		assertTrue(items("A").stream().filter(item -> item.type().equals("VERTEX"))
				.anyMatch(item -> item.pairs().stream().anyMatch(pair -> pair.code() == 42
						&& Math.abs(Double.parseDouble(pair.value()) - Math.tan(Math.toRadians(22.5))) < 1e-6)));
	}

	@Test
	void anyNameStaysOneLineOfAscii() throws Exception {
		byte[] bytes = Exported.bytes(new DxfExporter(), "Dvo\u0159\n  0\nEOF\n%%d \\U+0041 \ud83d\ude00");
		String title = items(bytes).stream().filter(item -> item.type().equals("TEXT") && item.first(8).equals("TEXT"))
				.map(item -> item.first(1)).filter(text -> text.contains("Dvo")).findFirst().orElseThrow();
		assertTrue(title.contains("Dvo\\U+0159   0 EOF %%%%d \\U+005CU+0041 \\U+FFFD"), title);
		for (byte value : bytes) {
			assertFalse(value < 0, "only ASCII");
		}
	}

	@Test
	void equalDrawingsGiveEqualBytes() throws Exception {
		assertArrayEquals(Exported.bytes(new DxfExporter(), "A"), Exported.bytes(new DxfExporter(), "A"));
	}
}
