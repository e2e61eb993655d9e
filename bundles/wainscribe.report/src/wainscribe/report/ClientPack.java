// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.core.runtime.OperationCanceledException;

import wainscribe.drawing.export.ElevationExporter;
import wainscribe.model.length.LengthUnit;
import wainscribe.report.files.ElevationPlan;
import wainscribe.report.files.PackFiles;
import wainscribe.report.files.PackFolder;
import wainscribe.report.view.PackView;
import wainscribe.report.view.PackViews;
import wainscribe.report.view.StickView;
import wainscribe.report.view.StickViews;

/**
 * Writes the client pack: {@code pack.html}, {@code pack.pdf}, {@code elevations/*.svg} and {@code *.dxf},
 * {@code cut-sheet.pdf}, {@code piece-labels.pdf}, {@code pieces.csv}, {@code story-sticks.pdf} where there are marks, and {@code quantities.xlsx}.
 * <p>
 * A pack is drafted out of sight and its files are moved into place when it is whole: an earlier one stays until then, and
 * whatever else is in the folder stays for good.
 */
public final class ClientPack {

	/** Kinds of elevation files in a pack. */
	private static final List<String> KINDS = List.of("svg", "dxf"); //$NON-NLS-1$ //$NON-NLS-2$

	private final DesignServices services;

	/** Creates the service. */
	public ClientPack(DesignServices services) {
		this.services = Objects.requireNonNull(services);
	}

	/** A step of the work. */
	private record Step(String what, PackFolder.Part part) {
	}

	/**
	 * Writes a pack.
	 *
	 * @param content  what it says
	 * @param folder   where it goes; an earlier pack in it is replaced, other files in it are left alone
	 * @param progress hears each step
	 * @return the files of the pack in their order
	 * @throws IOException                if a file cannot be written; a {@link java.nio.file.FileAlreadyExistsException} if
	 *                                    one is in the way that no pack wrote; then nothing has changed
	 * @throws OperationCanceledException if the user stops it; then nothing has changed
	 */
	public List<Path> write(PackContent content, Path folder, PackProgress progress) throws IOException {
		List<ElevationExporter> exporters = KINDS.stream().flatMap(kind -> services.exporters().find(kind).stream()).toList();
		List<Step> steps = steps(content, exporters);
		PackFolder target = new PackFolder(folder);
		return target.replace(draft -> {
			for (int i = 0; i < steps.size(); i++) {
				if (progress.isCancelled()) {
					throw new OperationCanceledException();
				}
				progress.step(steps.get(i).what(), i, steps.size());
				steps.get(i).part().write(draft);
			}
			if (progress.isCancelled()) {
				throw new OperationCanceledException();
			}
		});
	}

	private List<Step> steps(PackContent content, List<ElevationExporter> exporters) {
		PackFiles files = new PackFiles(content, services.elevation());
		List<String> extensions = exporters.stream().map(ElevationExporter::fileExtension).toList();
		PackViews views = new PackViews(services.profiles(), services.patterns(), services.elevation(), extensions);
		PackView view = views.of(content);
		List<Step> steps = new ArrayList<>();
		steps.add(new Step("pack.html", draft -> files.page(view, draft))); //$NON-NLS-1$
		steps.add(new Step("pack.pdf", draft -> files.book(view, draft))); //$NON-NLS-1$
		for (ElevationPlan plan : ElevationPlan.of(content)) {
			steps.add(new Step("elevations/" + plan.fileName(), draft -> { //$NON-NLS-1$
				for (ElevationExporter exporter : exporters) {
					files.elevation(plan, exporter, draft);
				}
			}));
		}
		if (!view.cutting().isEmpty()) {
			steps.add(new Step("cut-sheet.pdf", draft -> files.cutSheet(view, draft))); //$NON-NLS-1$
			steps.add(new Step("piece-labels.pdf", draft -> files.pieceLabels(view, draft))); //$NON-NLS-1$
		}
		List<StickView> sticks = new StickViews(content.home().getUnits() == null ? LengthUnit.MILLIMETRE : content.home().getUnits())
				.of(content);
		if (!sticks.isEmpty()) {
			steps.add(new Step("story-sticks.pdf", draft -> files.storySticks(view, sticks, draft))); //$NON-NLS-1$
		}
		steps.add(new Step("pieces.csv", files::pieces)); //$NON-NLS-1$
		steps.add(new Step("quantities.xlsx", files::quantities)); //$NON-NLS-1$
		return steps;
	}
}
