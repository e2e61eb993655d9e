// SPDX-License-Identifier: EPL-2.0
package wainscribe.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

import wainscribe.drawing.pdf.PaperSize;
import wainscribe.model.Home;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.profile.TrimProfile;
import wainscribe.report.pdf.CutSheet;
import wainscribe.report.pdf.PieceLabels;
import wainscribe.report.view.CuttingView;
import wainscribe.report.view.CuttingViews;
import wainscribe.takeoff.cutting.HomePlan;

/** Writes the sheets of a cutting plan as PDF, by themselves. Immutable. */
public final class CuttingSheets {

	private final ProfileCatalogue profiles;

	/**
	 * Creates the service.
	 *
	 * @param profiles names of profiles
	 */
	public CuttingSheets(ProfileCatalogue profiles) {
		this.profiles = Objects.requireNonNull(profiles);
	}

	/**
	 * Writes the sheet that lies beside the saw.
	 *
	 * @throws IOException if it can't be written
	 */
	public void cutSheet(Home home, HomePlan plan, Path file) throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		String unit = units(home) == LengthUnit.INCH ? "feet and inches" : "millimetres";
		new CutSheet().write(title(home), unit, view(home, plan), PaperSize.small(units(home)), out);
		Files.write(file, out.toByteArray());
	}

	/**
	 * Writes a label for every piece.
	 *
	 * @throws IOException if it can't be written
	 */
	public void labels(Home home, HomePlan plan, Path file) throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		new PieceLabels().write(title(home), view(home, plan), PaperSize.small(units(home)), out);
		Files.write(file, out.toByteArray());
	}

	private CuttingView view(Home home, HomePlan plan) {
		return new CuttingViews(id -> profiles.find(id).map(TrimProfile::name).orElse(id)).of(home, plan);
	}

	private static LengthUnit units(Home home) {
		return home.getUnits() == null ? LengthUnit.MILLIMETRE : home.getUnits();
	}

	private static String title(Home home) {
		return home.getName() == null ? "" : home.getName();
	}
}
