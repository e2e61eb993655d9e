// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.List;

/**
 * One wall.
 *
 * @param name        of the wall
 * @param description what the drawing shows, for those who cannot see it
 * @param working     the drawing with dimensions, an svg element
 * @param painted     the drawing in the colours chosen, an svg element
 * @param files       names of the files in which it lies in the pack, from the pack's folder
 * @param marks       marks of its frames
 * @param reasons     why frames stand as they do
 */
public record ElevationView(String name, String description, String working, String painted, List<String> files,
		List<MarkRow> marks, List<String> reasons) {

	/** Copies the lists. */
	public ElevationView {
		files = List.copyOf(files);
		marks = List.copyOf(marks);
		reasons = List.copyOf(reasons);
	}
}
