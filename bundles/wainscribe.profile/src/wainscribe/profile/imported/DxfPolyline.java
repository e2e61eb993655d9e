// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

import java.util.ArrayList;
import java.util.List;

import wainscribe.profile.section.Segment;

/** Draws polylines; a vertex may carry a bulge, the tangent of a quarter of the turn of the arc to the next one. */
record DxfPolyline(double scale) {

	private record Vertex(double x, double y, double bulge) {
	}

	/** Draws an LWPOLYLINE: its vertices follow one another in its own groups. */
	List<Segment> light(DxfEntity entity) throws DxfEntityException {
		List<Vertex> vertices = new ArrayList<>();
		double x = 0;
		for (DxfGroup group : entity.groups()) {
			if (group.code() == 10) {
				x = DxfEntity.number(group);
			} else if (group.code() == 20) {
				vertices.add(new Vertex(x, DxfEntity.number(group), 0));
			} else if (group.code() == 42 && !vertices.isEmpty()) {
				Vertex last = vertices.removeLast();
				vertices.add(new Vertex(last.x(), last.y(), DxfEntity.number(group)));
			}
		}
		return drawn(vertices, entity.isClosed());
	}

	/** Draws a POLYLINE: its vertices are the entities behind it, up to SEQEND. */
	List<Segment> old(DxfEntity entity, List<DxfEntity> behind) throws DxfEntityException {
		List<Vertex> vertices = new ArrayList<>();
		for (DxfEntity vertex : behind) {
			if (!"VERTEX".equals(vertex.name())) { //$NON-NLS-1$
				break;
			}
			boolean bulged = vertex.groups().stream().anyMatch(group -> group.code() == 42);
			vertices.add(new Vertex(vertex.number(10), vertex.number(20), bulged ? vertex.number(42) : 0));
		}
		return drawn(vertices, entity.isClosed());
	}

	private List<Segment> drawn(List<Vertex> vertices, boolean closed) throws DxfEntityException {
		if (vertices.size() < 2) {
			throw new DxfEntityException(vertices.size() + " vertices; expected 2 or more"); //$NON-NLS-1$
		}
		TracePen pen = new TracePen(scale, vertices.getFirst().x(), vertices.getFirst().y());
		int count = closed ? vertices.size() : vertices.size() - 1;
		for (int i = 0; i < count; i++) {
			Vertex from = vertices.get(i);
			Vertex to = vertices.get((i + 1) % vertices.size());
			double chord = Math.hypot(to.x() - from.x(), to.y() - from.y());
			pen.arcTo(to.x(), to.y(), -from.bulge() * chord / 2);
		}
		return DxfEntity.drawn(pen);
	}
}
