// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.length.Length;

/** Tells what is wrong with a section before anyone cuts to it. Keeps no state. */
public final class SectionCheck {

	/** The largest face width or projection that counts as a moulding. */
	public static final Length LARGEST = Length.ofMillimetres(600);
	/** The smallest face width or projection that counts as a moulding. */
	public static final Length SMALLEST = Length.ofMillimetres(1);

	private static final double LEAST_AREA = 0.5;
	private static final double BEHIND = 0.001;

	/**
	 * Checks a section: closed, with a back, of some area, not crossing itself, nowhere behind its back, and of a size that a
	 * moulding has.
	 *
	 * @param section any section
	 * @return what is wrong with it, the gravest first; empty when the section is sound
	 */
	public List<SectionFault> faults(ProfileSection section) {
		List<SectionFault> faults = new ArrayList<>();
		if (section.face().isEmpty()) {
			faults.add(new SectionFault(Messages.SectionCheck_NoFace, null));
			return faults;
		}
		gap(section).ifPresent(faults::add);
		if (section.back().isEmpty()) {
			faults.add(new SectionFault(Messages.SectionCheck_NoBack, null));
		}
		crossing(section).ifPresent(faults::add);
		if (faults.isEmpty()) {
			addSize(section, faults);
		}
		return faults;
	}

	/** Returns the first sentence of {@link #faults}; empty when the section is sound. */
	public Optional<String> firstFault(ProfileSection section) {
		return faults(section).stream().findFirst().map(SectionFault::sentence);
	}

	private static Optional<SectionFault> gap(ProfileSection section) {
		List<Segment> outline = section.outline();
		for (int i = 0; i < outline.size(); i++) {
			SectionPoint end = outline.get(i).end();
			SectionPoint next = outline.get((i + 1) % outline.size()).start();
			if (!end.equals(next)) {
				return Optional.of(new SectionFault(NLS.bind(Messages.SectionCheck_Open, shown(end.spot()), shown(next.spot())),
						end.spot()));
			}
		}
		return Optional.empty();
	}

	private static Optional<SectionFault> crossing(ProfileSection section) {
		return new OutlineCrossing(section.outline()).first()
				.map(spot -> new SectionFault(NLS.bind(Messages.SectionCheck_Crosses, shown(spot)), spot));
	}

	private static void addSize(ProfileSection section, List<SectionFault> faults) {
		SectionBox box = section.box();
		Length least = box.width().min(box.projection());
		Length most = box.width().max(box.projection());
		if (section.areaSquareMillimetres() < LEAST_AREA) {
			faults.add(new SectionFault(Messages.SectionCheck_NoArea, null));
		} else if (least.isLessThan(SMALLEST) || most.isMoreThan(LARGEST)) {
			faults.add(new SectionFault(NLS.bind(Messages.SectionCheck_Size, shown(box.width()), shown(box.projection())), null));
		}
		behind(section).ifPresent(faults::add);
	}

	private static Optional<SectionFault> behind(ProfileSection section) {
		double wall = new ProfileSection(section.back(), List.of()).box().low().y().approximateMillimetres();
		return section.face().stream().flatMap(segment -> segment.chords(BEHIND * 10).stream())
				.filter(spot -> spot.y() < wall - BEHIND).findFirst()
				.map(spot -> new SectionFault(NLS.bind(Messages.SectionCheck_BehindBack, shown(spot)), spot));
	}

	private static String shown(Length length) {
		return length.toMillimetres().toPlainString();
	}

	/** Three decimals at most; nothing is cut finer. */
	private static String shown(Spot spot) {
		return number(spot.x()) + ", " + number(spot.y()); //$NON-NLS-1$
	}

	private static String number(double value) {
		String text = String.format(Locale.ROOT, "%.3f", value); //$NON-NLS-1$
		return text.replaceAll("0+$", "").replaceAll("\\.$", "").replaceAll("^-0$", "0"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$ //$NON-NLS-6$
	}
}
