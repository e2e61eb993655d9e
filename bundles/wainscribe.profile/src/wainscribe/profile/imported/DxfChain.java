// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import wainscribe.profile.section.SectionPoint;
import wainscribe.profile.section.Segment;

/** Joins pieces end to end, whichever way round they were drawn, to one closed outline. */
record DxfChain(Path file, List<DxfPiece> pieces) {

	/** Ends this close, in millimetres, are one point; drawings are rarely more exact. */
	private static final double CLOSE = 0.02;

	List<Segment> closed() throws SectionImportException {
		if (pieces.isEmpty()) {
			throw new SectionImportException(file, "no LWPOLYLINE, POLYLINE, LINE or ARC; expected one closed outline"); //$NON-NLS-1$
		}
		List<DxfPiece> left = new ArrayList<>(pieces);
		List<Segment> chain = new ArrayList<>(left.removeFirst().segments());
		while (!meet(chain.getLast().end(), chain.getFirst().start())) {
			join(chain, next(left, chain.getLast().end()).segments());
		}
		if (!left.isEmpty()) {
			DxfPiece more = left.getFirst();
			throw new SectionImportException(file, more.row(), more.entity() + " apart from the outline; expected one closed outline"); //$NON-NLS-1$
		}
		SectionPoint start = chain.getFirst().start();
		Segment last = chain.removeLast();
		chain.add(last.between(last.start(), start));
		return chain;
	}

	private static void join(List<Segment> chain, List<Segment> more) {
		Segment first = more.getFirst();
		chain.add(first.between(chain.getLast().end(), first.end()));
		chain.addAll(more.subList(1, more.size()));
	}

	private DxfPiece next(List<DxfPiece> left, SectionPoint end) throws SectionImportException {
		for (DxfPiece piece : left) {
			if (meet(piece.start(), end) || meet(piece.end(), end)) {
				left.remove(piece);
				return meet(piece.start(), end) ? piece : piece.reversed();
			}
		}
		throw new SectionImportException(file, String.format(Locale.ROOT,
				"the outline is open at %.3f mm, %.3f mm; expected a line or an arc from there", end.spot().x(), end.spot().y())); //$NON-NLS-1$
	}

	private static boolean meet(SectionPoint one, SectionPoint other) {
		return one.spot().distanceTo(other.spot()) <= CLOSE;
	}
}
