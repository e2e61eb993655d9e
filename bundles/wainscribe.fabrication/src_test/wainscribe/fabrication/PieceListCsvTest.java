// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringWriter;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;

import wainscribe.layout.RailBand;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.BuiltInProfiles;

class PieceListCsvTest {

	private static List<NamedCsvRecord> rows(SampleRoom sample) throws IOException {
		CutList list = new CutLists(BuiltInProfiles.catalogue()).of(sample.design());
		StringWriter out = new StringWriter();
		new PieceListCsv(LengthUnit.MILLIMETRE).write(List.of(list), out);
		return CsvReader.builder().ofNamedCsvRecord(out.toString()).stream().toList();
	}

	@Test
	void everyPieceHasARow() throws IOException {
		SampleRoom sample = new SampleRoom(2400);
		sample.wall("A", 3000, "90", SampleRoom.frame("A1", 80, 220, 500, 600, 0));
		List<NamedCsvRecord> rows = rows(sample);
		assertEquals(4, rows.size());
		NamedCsvRecord top = rows.getFirst();
		assertEquals(PieceListCsv.COLUMNS, top.getHeader());
		assertEquals("A1/top", top.getField("label"));
		assertEquals("ogee-32", top.getField("profile"));
		assertEquals("500mm", top.getField("length"));
		assertEquals("500 mm", top.getField("cut to"));
		assertEquals("436 mm", top.getField("short point"));
		assertEquals("mitre", top.getField("start"));
		assertEquals("45", top.getField("start turn"));
		assertEquals("outer edge", top.getField("end long side"));
		assertEquals("Reading room", top.getField("room"));
	}

	@ParameterizedTest
	@ValueSource(strings = { "=1+1", "+49", "-3", "@sum", "\tx", "'quoted" })
	void textThatLooksLikeAFormulaStaysText(String name) throws IOException {
		SampleRoom sample = new SampleRoom(2400);
		sample.rail = new RailBand(SampleRoom.mm(840), SampleRoom.mm(900), SampleRoom.mm(20));
		sample.wall(name, 3000, "90");
		NamedCsvRecord row = rows(sample).getFirst();
		assertEquals('\'' + name, row.getField("wall"));
		assertEquals('\'' + name + "/rail", row.getField("label"));
	}

	@Test
	void quotesAndCommasSurvive() throws IOException {
		SampleRoom sample = new SampleRoom(2400);
		sample.rail = new RailBand(SampleRoom.mm(840), SampleRoom.mm(900), SampleRoom.mm(20));
		sample.wall("by the \"old\" stove, left", 3000, "90");
		assertEquals("by the \"old\" stove, left", rows(sample).getFirst().getField("wall"));
	}
}
