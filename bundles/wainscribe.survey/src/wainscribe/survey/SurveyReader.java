// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Set;

/**
 * Reads a tape-measure CSV into rooms and checks it.
 * <p>
 * All problems are collected, so that a preview can mark every row; a caller that wants only a usable survey adds
 * {@link Survey#orRefuse()}.
 */
public final class SurveyReader {

	/** The wall patterns that are always there. */
	public static final Set<String> BUILT_IN_PATTERNS = Set.of("frames-under-rail", "frames-two-tier", "frames-to-ceiling", "none"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$

	private final Set<String> patterns;

	/** Creates a reader that knows the built-in wall patterns. */
	public SurveyReader() {
		this(BUILT_IN_PATTERNS);
	}

	/**
	 * Creates a reader.
	 *
	 * @param patterns ids that a brief may name as its wall pattern
	 */
	public SurveyReader(Set<String> patterns) {
		this.patterns = Set.copyOf(patterns);
	}

	/**
	 * Reads a file. A file that cannot be read as text gives a survey with that one error.
	 *
	 * @throws IOException if the disk fails
	 */
	public Survey read(Path file) throws IOException {
		throw new UnsupportedOperationException();
	}

	/**
	 * Reads a survey from a stream, which is left open.
	 *
	 * @param file how messages name it
	 * @throws IOException if reading fails
	 */
	public Survey read(String file, InputStream stream) throws IOException {
		throw new UnsupportedOperationException(patterns.toString());
	}
}
