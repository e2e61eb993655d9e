// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import wainscribe.profile.section.Segment;

/** Finds the one outline among the entities of a text DXF file: pairs of lines, a group code and its value. */
final class DxfFile {

	private static final Set<String> PASSED_BY = Set.of("TEXT", "MTEXT", "DIMENSION", "LEADER", "POINT", "HATCH", "VIEWPORT", "ATTDEF"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$ //$NON-NLS-7$ //$NON-NLS-8$

	private final Path file;
	private final double scale;

	DxfFile(Path file, double millimetresPerUnit) {
		this.file = file;
		scale = millimetresPerUnit;
	}

	List<Segment> outline() throws IOException {
		List<DxfEntity> entities = entities(groups());
		List<DxfPiece> pieces = new ArrayList<>();
		for (int i = 0; i < entities.size(); i++) {
			DxfEntity entity = entities.get(i);
			try {
				switch (entity.name()) {
					case "LWPOLYLINE" -> pieces.add(new DxfPiece(entity.row(), entity.name(), new DxfPolyline(scale).light(entity))); //$NON-NLS-1$
					case "POLYLINE" -> pieces.add(new DxfPiece(entity.row(), entity.name(), //$NON-NLS-1$
							new DxfPolyline(scale).old(entity, entities.subList(i + 1, entities.size()))));
					case "LINE" -> pieces.add(new DxfPiece(entity.row(), entity.name(), entity.line(scale))); //$NON-NLS-1$
					case "ARC" -> pieces.add(new DxfPiece(entity.row(), entity.name(), entity.arc(scale))); //$NON-NLS-1$
					case "VERTEX", "SEQEND" -> { //$NON-NLS-1$ //$NON-NLS-2$
						// Read with the POLYLINE before them.
					}
					default -> refuseDrawn(entity);
				}
			} catch (DxfEntityException | ArithmeticException e) {
				throw new SectionImportException(file, entity.row(), entity.name() + ": " + e.getMessage(), e); //$NON-NLS-1$
			}
		}
		return new DxfChain(file, pieces).closed();
	}

	private void refuseDrawn(DxfEntity entity) throws SectionImportException {
		if (!PASSED_BY.contains(entity.name())) {
			throw new SectionImportException(file, entity.row(),
					entity.name() + "; expected LWPOLYLINE, POLYLINE, LINE or ARC: explode or convert it first"); //$NON-NLS-1$
		}
	}

	private List<DxfGroup> groups() throws IOException {
		// Old files are in an 8-bit code page; only letters of names differ, which are not read.
		List<String> lines = Files.readAllLines(file, StandardCharsets.ISO_8859_1);
		if (lines.isEmpty() || lines.getFirst().contains("Binary DXF")) { //$NON-NLS-1$
			throw new SectionImportException(file, 1, "no text; expected a DXF file in text form"); //$NON-NLS-1$
		}
		List<DxfGroup> groups = new ArrayList<>();
		for (int i = 0; i + 1 < lines.size(); i += 2) {
			String code = lines.get(i).strip();
			if (!code.matches("-?\\d{1,4}")) { //$NON-NLS-1$
				throw new SectionImportException(file, i + 1, "\"" + code + "\"; expected a group code"); //$NON-NLS-1$ //$NON-NLS-2$
			}
			groups.add(new DxfGroup(i + 1, Integer.parseInt(code), lines.get(i + 1).strip()));
		}
		return groups;
	}

	/** Returns what stands in the section ENTITIES. */
	private List<DxfEntity> entities(List<DxfGroup> groups) throws SectionImportException {
		List<DxfEntity> entities = new ArrayList<>();
		boolean within = false;
		for (int i = 0; i < groups.size(); i++) {
			DxfGroup group = groups.get(i);
			if (group.code() == 2 && "ENTITIES".equals(group.value()) && i > 0 && "SECTION".equals(groups.get(i - 1).value())) { //$NON-NLS-1$ //$NON-NLS-2$
				within = true;
			} else if (within && group.code() == 0 && "ENDSEC".equals(group.value())) { //$NON-NLS-1$
				return entities;
			} else if (within && group.code() == 0) {
				entities.add(new DxfEntity(group.row(), group.value(), new ArrayList<>()));
			} else if (within && !entities.isEmpty()) {
				entities.getLast().groups().add(group);
			}
		}
		throw new SectionImportException(file, within ? "the section ENTITIES does not end; the file is cut off" //$NON-NLS-1$
			: "no section ENTITIES; expected a DXF file"); //$NON-NLS-1$
	}
}
