// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour.list;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ColourListReaderTest {

	private static final String WAVELENGTHS = IntStream.rangeClosed(20, 35).mapToObj(i -> String.valueOf(i * 20)).collect(Collectors.joining(","));

	@Test
	void labRows() throws Exception {
		ColourList list = csv("# mine\nname,code,L,a,b\nSlate,S-1,50,-2,3\n\"Oak, light\",,72,8,24\n");
		assertEquals(List.of("Slate", "Oak, light"), list.colours().stream().map(NamedColour::name).toList());
		assertEquals("S-1", list.colours().getFirst().code());
		assertEquals(24, list.colours().getLast().colour().lab().b());
		assertEquals(List.of(), list.refused());
	}

	@Test
	void screenRowsAndBadOnesNamed() throws Exception {
		ColourList list = csv("name,srgb\nA,#8a9a94\nB,#8a9a9\nC,8a9a94\nD\n");
		assertEquals(1, list.colours().size());
		assertEquals(List.of("mine.csv, row 3, column srgb: \"#8a9a9\": expected #rrggbb", "mine.csv, row 4, column srgb: \"8a9a94\": expected #rrggbb",
				"mine.csv, row 5: found 1 cells, expected 2"), list.refused());
	}

	/** A flat half is L* 76.069 by ISO/CIE 11664-4. */
	@Test
	void spectra() throws Exception {
		String half = WAVELENGTHS.replaceAll("\\d+", "0.5");
		ColourList list = csv("name," + WAVELENGTHS + "\nHalf," + half + "\nBad," + half.replaceFirst("0.5", "NaN") + "\n");
		assertEquals(76.069, list.colours().getFirst().colour().lab().lightness(), 0.001);
		assertEquals(1, list.refused().size());
		assertTrue(list.refused().getFirst().contains("row 3, column 400"), list.refused()::toString);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "name,L,a,b,srgb|colours in several ways", "name,remark|no columns of colour", "L,a,b|expected a column name",
			"name,name,srgb|a column twice", "name,400,450,700|a gap from 400 to 450 nm", "name,500,520,700|expected readings from 400" })
	void headersThatGiveNoColour(String header, String message) {
		ColourListException refused = assertThrows(ColourListException.class, () -> csv(header + "\n"));
		assertTrue(refused.getMessage().contains(message), refused.getMessage());
	}

	@Test
	void anEmptyFileIsNoList() {
		assertThrows(ColourListException.class, () -> csv(""));
	}

	@Test
	void exchangeXml() throws ColourListException {
		String half = IntStream.rangeClosed(0, 31).mapToObj(i -> "0.5").collect(Collectors.joining(" "));
		ColourList list = xml("""
				<?xml version="1.0" encoding="UTF-8"?>
				<cc:CxF xmlns:cc="http://colorexchangeformat.com/CxF3-core"><cc:Resources><cc:ObjectCollection>
				<cc:Object Name="Half" Id="1"><cc:ColorValues><cc:ReflectanceSpectrum StartWL="400">%s</cc:ReflectanceSpectrum></cc:ColorValues></cc:Object>
				<cc:Object Name="Slate" Id="2"><cc:ColorValues><cc:ColorCIELab><cc:L>50</cc:L><cc:A>-2</cc:A><cc:B>3</cc:B></cc:ColorCIELab>
				<cc:ColorSRGB MaxRange="255"><cc:R>1</cc:R><cc:G>2</cc:G><cc:B>3</cc:B></cc:ColorSRGB></cc:ColorValues></cc:Object>
				<cc:Object Name="Short" Id="3"><cc:ColorValues><cc:ReflectanceSpectrum StartWL="400">0.5 0.5</cc:ReflectanceSpectrum></cc:ColorValues></cc:Object>
				</cc:ObjectCollection></cc:Resources></cc:CxF>
				""".formatted(half));
		assertEquals(2, list.colours().size());
		assertEquals(76.069, list.colours().getFirst().colour().lab().lightness(), 0.001);
		assertEquals(50, list.colours().getLast().colour().lab().lightness());
		assertEquals(1, list.refused().size());
		assertTrue(list.refused().getFirst().contains("\"Short\""));
	}

	/** An external entity would read a file of the machine. */
	@ParameterizedTest
	@ValueSource(strings = { "<!DOCTYPE CxF [<!ENTITY x SYSTEM 'file:///etc/hostname'>]><CxF>&x;</CxF>", "<CxF><Object", "<html/>", "" })
	void xmlThatIsRefused(String text) {
		ColourListException refused = assertThrows(ColourListException.class, () -> xml(text));
		assertTrue(refused.getMessage().startsWith("mine.cxf"), refused.getMessage());
		assertEquals(1, refused.getMessage().lines().count());
	}

	private static ColourList csv(String text) throws ColourListException, IOException {
		return new ColourListReader().read(new StringReader(text), "mine.csv");
	}

	private static ColourList xml(String text) throws ColourListException {
		return new ColourExchangeReader().read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "mine.cxf");
	}
}
