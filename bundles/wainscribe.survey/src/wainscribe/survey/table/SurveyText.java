// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey.table;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

import org.eclipse.osgi.util.NLS;

import wainscribe.survey.QuotedText;

/** The bytes of a survey file as text, refused early where they are none or far too many. */
public final class SurveyText {

	/** Longest physical line in bytes; no row of measurements comes near it. */
	static final int LONGEST_LINE = 64 * 1024;
	/** Largest file in bytes, so that a wrong file never fills the memory. */
	static final int LARGEST_FILE = 16 * 1024 * 1024;

	private static final int CHUNK = 8 * 1024;
	private static final char BYTE_ORDER_MARK = '\ufeff';

	private SurveyText() {
	}

	/**
	 * Reads all text, without a byte order mark.
	 *
	 * @throws UnreadableException if it is not UTF-8, or a line or the whole is too long
	 * @throws IOException         if reading fails
	 */
	public static String read(InputStream stream) throws IOException, UnreadableException {
		byte[] bytes = bounded(stream);
		CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
				.onUnmappableCharacter(CodingErrorAction.REPORT);
		ByteBuffer in = ByteBuffer.wrap(bytes);
		CharBuffer out = CharBuffer.allocate(bytes.length + 1);
		CoderResult result = decoder.decode(in, out, true);
		String text = out.flip().toString();
		if (result.isError()) {
			String found = String.format("byte 0x%02X", bytes[in.position()] & 0xff); //$NON-NLS-1$
			throw new UnreadableException(lineOf(text), cellOf(text), NLS.bind(Messages.SurveyText_NotUtf8, QuotedText.of(found)));
		}
		return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
	}

	private static byte[] bounded(InputStream stream) throws IOException, UnreadableException {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream(CHUNK);
		byte[] chunk = new byte[CHUNK];
		int lineLength = 0;
		for (int count = stream.read(chunk); count >= 0; count = stream.read(chunk)) {
			bytes.write(chunk, 0, count);
			for (int i = 0; i < count; i++) {
				lineLength = chunk[i] == '\n' || chunk[i] == '\r' ? 0 : lineLength + 1;
				if (lineLength > LONGEST_LINE) {
					throw tooLong(bytes.toString(StandardCharsets.UTF_8));
				}
			}
			if (bytes.size() > LARGEST_FILE) {
				String text = bytes.toString(StandardCharsets.UTF_8);
				throw new UnreadableException(lineOf(text), cellOf(text), Messages.SurveyText_FileTooLarge);
			}
		}
		return bytes.toByteArray();
	}

	private static UnreadableException tooLong(String text) {
		String line = text.substring(Math.max(text.lastIndexOf('\n'), text.lastIndexOf('\r')) + 1);
		String cell = line.substring(line.lastIndexOf(',') + 1);
		return new UnreadableException(lineOf(text), cellOf(text), NLS.bind(Messages.SurveyText_LineTooLong, QuotedText.of(cell)));
	}

	/** Returns the number of the physical line at the end of the text; CR, LF and CRLF end a line. */
	static int lineOf(String text) {
		int line = 1;
		for (int i = 0; i < text.length(); i++) {
			char c = text.charAt(i);
			if (c == '\n' || c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n')) {
				line++;
			}
		}
		return line;
	}

	/** Returns the number of the cell at the end of the text; commas inside quotes separate nothing. */
	static int cellOf(String text) {
		String line = text.substring(Math.max(text.lastIndexOf('\n'), text.lastIndexOf('\r')) + 1);
		int cell = 1;
		boolean quoted = false;
		boolean atStart = true;
		for (char c : line.toCharArray()) {
			if (c == '"' && (quoted || atStart)) {
				quoted = !quoted;
			} else if (c == ',' && !quoted) {
				cell++;
			}
			atStart = c == ',' && !quoted;
		}
		return cell;
	}
}
