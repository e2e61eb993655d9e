// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.storage;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.XMIException;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.xml.sax.SAXParseException;

/** Reads one model file and says what is to be in it: XMI, one element a line, UTF-8. */
final class ModelFile {

	private static final Map<String, Boolean> PARSER_FEATURES = Map.of(
			"http://apache.org/xml/features/disallow-doctype-decl", Boolean.TRUE, //$NON-NLS-1$
			"http://xml.org/sax/features/external-general-entities", Boolean.FALSE, //$NON-NLS-1$
			"http://xml.org/sax/features/external-parameter-entities", Boolean.FALSE); //$NON-NLS-1$

	private ModelFile() {
	}

	/** Reads a file into an empty resource and returns its root. */
	static EObject read(Path path, Resource into, FormatVersion format, EClass expected) throws IOException {
		String xml = format.lift(path, decoded(path));
		try {
			into.load(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)), readOptions());
		} catch (IOException | RuntimeException e) {
			throw located(path, e);
		}
		if (!into.getErrors().isEmpty() && into.getErrors().get(0) instanceof Exception error) {
			throw located(path, error);
		}
		if (into.getContents().size() != 1 || !expected.isInstance(into.getContents().get(0))) {
			throw new HomeFileException(path, "expected one " + expected.getName()); //$NON-NLS-1$
		}
		return into.getContents().get(0);
	}

	/** Returns what a resource is in its file. */
	static byte[] bytes(Resource resource) throws IOException {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		resource.save(bytes, writeOptions());
		return bytes.toByteArray();
	}

	private static String decoded(Path path) throws IOException {
		if (!Files.isRegularFile(path)) {
			throw new HomeFileException(path, Files.exists(path) ? "is no file; expected a file" : "is missing; expected a file"); //$NON-NLS-1$ //$NON-NLS-2$
		}
		try {
			return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(Files.readAllBytes(path))).toString();
		} catch (CharacterCodingException e) {
			HomeFileException exception = new HomeFileException(path, "is not encoded as expected; expected UTF-8"); //$NON-NLS-1$
			exception.initCause(e);
			throw exception;
		}
	}

	private static Map<Object, Object> readOptions() {
		Map<Object, Object> options = new HashMap<>();
		options.put(XMLResource.OPTION_PARSER_FEATURES, PARSER_FEATURES);
		return options;
	}

	private static Map<Object, Object> writeOptions() {
		Map<Object, Object> options = new HashMap<>();
		options.put(XMLResource.OPTION_ENCODING, StandardCharsets.UTF_8.name());
		options.put(Resource.OPTION_LINE_DELIMITER, "\n"); //$NON-NLS-1$
		return options;
	}

	private static HomeFileException located(Path path, Exception error) {
		for (Throwable cause = error; cause != null; cause = cause.getCause()) {
			if (cause instanceof XMIException found && found.getLine() > 0) {
				return new HomeFileException(path, found.getLine(), found.getColumn(), reason(found), error);
			}
			if (cause instanceof SAXParseException found) {
				return new HomeFileException(path, found.getLineNumber(), found.getColumnNumber(), reason(found), error);
			}
		}
		HomeFileException exception = new HomeFileException(path, reason(error));
		exception.initCause(error);
		return exception;
	}

	private static String reason(Exception found) {
		Throwable root = found;
		while (root.getCause() != null && root.getCause() != root) {
			root = root.getCause();
		}
		String text = root.getMessage() == null ? root.getClass().getSimpleName() : root.getMessage();
		return "can't be read (" + text + "); expected a whole file written by Wainscribe"; //$NON-NLS-1$ //$NON-NLS-2$
	}
}
