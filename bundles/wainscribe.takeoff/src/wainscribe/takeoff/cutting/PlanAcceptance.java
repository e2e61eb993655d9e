// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;

import wainscribe.model.CutBar;
import wainscribe.model.CutPiece;
import wainscribe.model.Home;
import wainscribe.model.StoredOffcut;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.LengthFormat;

/**
 * What accepting a cutting plan changes in a home: its bars are kept as decided, the offcuts it cuts from are used up, and its
 * leftovers of at least the shortest offcut become offcuts.
 *
 * @param used offcuts of the home that are used up
 * @param left new offcuts, in no home yet
 * @param bars bars of the plan, in no home yet
 */
public record PlanAcceptance(List<StoredOffcut> used, List<StoredOffcut> left, List<CutBar> bars) {

	private static final Pattern NUMBERED = Pattern.compile("O(\\d{1,8})"); //$NON-NLS-1$

	/** Copies the lists. */
	public PlanAcceptance {
		used = List.copyOf(used);
		left = List.copyOf(left);
		bars = List.copyOf(bars);
	}

	/**
	 * Works out what accepting a plan changes.
	 *
	 * @param home the home
	 * @param plan a plan of it
	 * @return the changes; empty if the home no longer has an offcut that the plan cuts from
	 */
	public static Optional<PlanAcceptance> of(Home home, HomePlan plan) {
		Set<String> wanted = plan.bars().stream().map(PlannedBar::offcut).filter(id -> !id.isEmpty()).collect(Collectors.toSet());
		List<StoredOffcut> used = home.getOffcuts().stream().filter(offcut -> wanted.contains(offcut.getId())).toList();
		if (used.size() < wanted.size()) {
			return Optional.empty();
		}
		List<StoredOffcut> left = new ArrayList<>();
		int number = highestNumber(home);
		for (PlannedBar bar : plan.leavingOffcuts()) {
			number++;
			left.add(leftOf(bar, "O" + number, home)); //$NON-NLS-1$
		}
		return Optional.of(new PlanAcceptance(used, left, plan.bars().stream().map(PlanAcceptance::kept).toList()));
	}

	/** Makes the changes. */
	public void applyTo(Home home) {
		home.getOffcuts().removeAll(used);
		home.getOffcuts().addAll(left);
		home.getCutBars().addAll(bars);
	}

	/** A number that was on an offcut once is not given again. */
	private static int highestNumber(Home home) {
		return Stream.concat(home.getOffcuts().stream().map(StoredOffcut::getName), home.getCutBars().stream().map(CutBar::getName))
				.filter(name -> name != null).map(NUMBERED::matcher).filter(Matcher::matches)
				.mapToInt(matcher -> Integer.parseInt(matcher.group(1))).max().orElse(0);
	}

	private static StoredOffcut leftOf(PlannedBar bar, String name, Home home) {
		StoredOffcut offcut = WainscribeFactory.eINSTANCE.createStoredOffcut();
		offcut.setId(EcoreUtil.generateUUID());
		offcut.setName(name);
		offcut.setProfile(bar.kind().profile());
		offcut.setMaterial(bar.kind().material());
		offcut.setLength(bar.remainder());
		PlannedPiece last = bar.pieces().getLast();
		offcut.setOrigin(NLS.bind(Messages.PlanAcceptance_Origin,
				new Object[] { LengthFormat.asShown(bar.length(), home.getUnits()), last.room(), last.label() }));
		return offcut;
	}

	private static CutBar kept(PlannedBar bar) {
		CutBar cut = WainscribeFactory.eINSTANCE.createCutBar();
		cut.setId(EcoreUtil.generateUUID());
		cut.setName(bar.isBought() ? null : bar.label());
		cut.setProfile(bar.kind().profile());
		cut.setMaterial(bar.kind().material());
		cut.setLength(bar.length());
		cut.setPrice(bar.price());
		for (PlannedPiece piece : bar.pieces()) {
			CutPiece cutPiece = WainscribeFactory.eINSTANCE.createCutPiece();
			cutPiece.setRoom(piece.room());
			cutPiece.setLabel(piece.label());
			cutPiece.setLength(piece.length());
			cut.getPieces().add(cutPiece);
		}
		return cut;
	}
}
