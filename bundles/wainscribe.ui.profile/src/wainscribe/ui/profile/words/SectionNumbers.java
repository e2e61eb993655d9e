// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.length.LengthUnit;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionFault;
import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.session.ProfileSession;

/** Says what follows from a section: its size, its girth, its area, whether it can be coped, and what is wrong with it. */
public final class SectionNumbers {

	private static final double SQUARE_MILLIMETRES_PER_SQUARE_INCH = 25.4 * 25.4;
	private static final double SQUARE_MILLIMETRES_PER_SQUARE_CENTIMETRE = 100;
	private static final String BETWEEN = "   \u00b7   "; //$NON-NLS-1$

	private SectionNumbers() {
	}

	/** Returns the numbers of the last sound section in one line. */
	public static String line(ProfileSession session) {
		ProfileSection section = session.sound();
		LengthUnit unit = session.units();
		return String.join(BETWEEN, List.of(NLS.bind(Messages.SectionNumbers_Face, NodeWords.measured(section.box().width().approximateMillimetres(), unit)),
				NLS.bind(Messages.SectionNumbers_Projection, NodeWords.measured(section.box().projection().approximateMillimetres(), unit)),
				NLS.bind(Messages.SectionNumbers_Girth, girth(section, unit)),
				NLS.bind(Messages.SectionNumbers_Area, area(section, unit)), coping(section)));
	}

	/** Returns what is wrong now, or else the numbers. */
	public static String sentence(ProfileSession session) {
		return session.faults().isEmpty() ? line(session) : sentence(session.faults().getFirst());
	}

	/** Returns a fault as a sentence. */
	public static String sentence(SectionFault fault) {
		String words = fault.sentence();
		return words.substring(0, 1).toUpperCase(Locale.getDefault()) + words.substring(1) + '.';
	}

	/** Returns the developed length of the face. */
	public static String girth(ProfileSection section, LengthUnit unit) {
		return NodeWords.measured(section.girthMillimetres(), unit);
	}

	/** Returns the area in square inches or square centimetres, to a hundredth. */
	public static String area(ProfileSection section, LengthUnit unit) {
		double one = unit == LengthUnit.INCH ? SQUARE_MILLIMETRES_PER_SQUARE_INCH : SQUARE_MILLIMETRES_PER_SQUARE_CENTIMETRE;
		String number = BigDecimal.valueOf(section.areaSquareMillimetres() / one).setScale(2, RoundingMode.HALF_UP).toPlainString();
		return NLS.bind(unit == LengthUnit.INCH ? Messages.SectionNumbers_SquareInches : Messages.SectionNumbers_SquareCentimetres, number);
	}

	private static String coping(ProfileSection section) {
		return section.canBeCoped() ? Messages.SectionNumbers_Copes : Messages.SectionNumbers_MitreOnly;
	}
}
