// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import wainscribe.model.length.LengthUnit;
import wainscribe.survey.SurveyColumn;
import wainscribe.survey.SurveyProblem;
import wainscribe.survey.Surveys;

/** How the CSV reader takes what people write; quotes as RFC 4180. */
class SurveyTableTest {

	private final List<SurveyProblem> problems = new ArrayList<>();

	private SurveyTable read(String text) throws UnreadableException {
		SurveyTable table = new SurveyTable(problems);
		table.read(text);
		return table;
	}

	private String rows(String rows) throws UnreadableException {
		return read(Surveys.HEADER + rows).rows().stream().map(row -> row.row() + "" + row.cells()).collect(Collectors.joining(" "));
	}

	@Test
	void anInchMarkInAnUnquotedCellIsItself() throws UnreadableException {
		assertEquals("2{KIND=wall, WIDTH=72 1/2\", HEIGHT=6' 1 1/2\"}", rows("wall,,,,,,72 1/2\",6' 1 1/2\",,,\n"));
	}

	@Test
	void quotedCellsHoldCommasQuotesAndLineBreaks() throws UnreadableException {
		assertEquals("2{KIND=wall, NAME=a, \"b\"\nc, X=1} 4{KIND=wall}", rows("wall,,,\"a, \"\"b\"\"\nc\",1,,,,,,\nwall,,,,,,,,,,\n"));
		assertEquals("2{KIND=wall, NAME=spaces round it}", rows("wall,,,  \"spaces round it\"  ,,,,,,,\n"));
	}

	@Test
	void rowsArePhysicalLines() throws UnreadableException {
		assertEquals("5{KIND=a} 8{KIND=b}", rows("# one\r\n\r\n#\"\r\na,\"\r\n\r\n\",,,,,,,,,\r\nb,,,,,,,,,,"));
		assertEquals("2{KIND=a} 3{KIND=b}", rows("a,,,,,,,,,,\rb\r"));
	}

	@Test
	void shortRowsEmptyRowsAndEmptyExtraCellsAreFine() throws UnreadableException {
		assertEquals("2{KIND=a} 4{KIND=b}", rows("a\n,,,,,,,,,,\nb,,,,,,,,,,,,,\n   \n"));
		assertEquals(List.of(), problems);
	}

	@Test
	void theHeaderNamesTheColumns() throws UnreadableException {
		SurveyTable table = read("# Units : MM ,,,\n Note ,ANGLE,depth,height,width,y,x,name,wall,room,kind,,\nn,,,,,,,,,r,k\n");
		assertEquals(LengthUnit.MILLIMETRE, table.units());
		assertEquals("n", table.rows().getFirst().cell(SurveyColumn.NOTE));
		assertEquals("k", table.rows().getFirst().cell(SurveyColumn.KIND));
		assertEquals("", table.rows().getFirst().cell(SurveyColumn.X));
	}

	@Test
	void withoutAUnitsLineThereIsNoUnit() throws UnreadableException {
		assertNull(read(Surveys.HEADER + "a\n").units());
	}
}
