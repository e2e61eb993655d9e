// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.colour;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;

/** The columns of {@code cie-5nm.csv}: what colorimetry takes from the standard and cannot compute. */
final class CieTable {

	static final CieTable INSTANCE = read();

	private final Map<String, double[]> columns;

	private CieTable(Map<String, double[]> columns) {
		this.columns = columns;
	}

	/** Returns the samples of a column, negative ones included: the components of daylight have some. */
	double[] column(String name) {
		return columns.get(name).clone();
	}

	/** Returns a column that is a spectrum. */
	Spectrum spectrum(String name) {
		return Spectrum.of(column(name));
	}

	private static CieTable read() {
		try (InputStream stream = CieTable.class.getResourceAsStream("cie-5nm.csv"); //$NON-NLS-1$
				CsvReader<NamedCsvRecord> reader = CsvReader.builder().commentStrategy(CommentStrategy.SKIP)
						.ofNamedCsvRecord(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
			List<NamedCsvRecord> rows = reader.stream().toList();
			Map<String, double[]> columns = new HashMap<>();
			for (String name : rows.get(0).getHeader()) {
				columns.put(name, rows.stream().mapToDouble(row -> Double.parseDouble(row.getField(name))).toArray());
			}
			return new CieTable(Map.copyOf(columns));
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
