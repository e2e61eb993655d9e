// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import wainscribe.fabrication.CutLists;
import wainscribe.layout.RoomDesign;
import wainscribe.model.Home;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.takeoff.cutting.CuttingDecisions;
import wainscribe.takeoff.cutting.HomeCuttingJob;
import wainscribe.takeoff.cutting.HomePlanner;

/**
 * Takes off everything to buy for the designs of a home and prices it from the home's price list.
 * <p>
 * Each quantity shows its formula with the numbers put in and where its rates come from. The rates are defaults of common
 * practice and general guides; the label of the product bought rules. What is not in the price list stays unpriced.
 */
public final class Takeoffs {

	/** How long the cutting plan of all rooms, and of one room, may take; nearly all are proved long before. */
	private static final long HOME_MILLIS = 5_000;
	private static final long ROOM_MILLIS = 1_000;

	private final ProfileCatalogue profiles;
	private final CutLists cutLists;
	private final HomePlanner planner = new HomePlanner();

	/**
	 * Creates the service.
	 *
	 * @param profiles the profiles that designs refer to
	 */
	public Takeoffs(ProfileCatalogue profiles) {
		this.profiles = Objects.requireNonNull(profiles);
		cutLists = new CutLists(profiles);
	}

	/**
	 * Plans what is cut from what, within a time: what {@link #of(Home, List)} buys.
	 *
	 * @param home    the home, with its prices, offcuts and accepted plans
	 * @param designs the designs of its rooms; may be some of them only
	 */
	public CutStock stock(Home home, List<RoomDesign> designs) {
		HomeCuttingJob job = HomeCuttingJob.of(home, designs, designs.stream().map(cutLists::of).toList(), CuttingDecisions.of(home));
		return new CutStock(job, planner.plan(job, HOME_MILLIS));
	}

	/** Returns what the paints of a room cover, wall by wall. */
	public List<PaintArea> paintAreas(RoomDesign design) {
		Amounts amounts = new Amounts(design.home().getUnits() == null ? LengthUnit.MILLIMETRE : design.home().getUnits());
		return List.copyOf(new PaintZones(new RoomMeasure(design, cutLists.of(design)), new Girth(profiles), amounts).wallByWall());
	}

	/**
	 * Takes off a home.
	 *
	 * @param home    the home, with its prices and tax
	 * @param designs the designs of its rooms, in the order shown; may be some of them only
	 * @return the rooms one by one, and all of them bought together
	 */
	public HomeTakeoff of(Home home, List<RoomDesign> designs) {
		return of(home, designs, stock(home, designs));
	}

	/**
	 * Takes off a home whose cutting plan is known.
	 *
	 * @param home    the home, with its prices and tax
	 * @param designs the designs of its rooms, in the order shown; may be some of them only
	 * @param stock   the plan of these rooms
	 * @return the rooms one by one from new lengths, and all of them bought together by the plan
	 */
	public HomeTakeoff of(Home home, List<RoomDesign> designs, CutStock stock) {
		Amounts amounts = new Amounts(home.getUnits() == null ? LengthUnit.MILLIMETRE : home.getUnits());
		BigDecimal tax = home.getTax() == null ? BigDecimal.ZERO : home.getTax().inBaseUnit();
		List<RoomMeasure> measures = designs.stream().map(design -> new RoomMeasure(design, cutLists.of(design))).toList();
		List<RoomTakeoff> rooms = new ArrayList<>();
		for (RoomMeasure measure : measures) {
			HomeCuttingJob job = HomeCuttingJob.anew(home, List.of(measure.design()), List.of(measure.cutList()));
			List<TakeoffLine> lines = lines(List.of(measure), home, new CutStock(job, planner.plan(job, ROOM_MILLIS)), amounts);
			rooms.add(new RoomTakeoff(measure.cutList().room(), lines, TakeoffTotals.of(lines, tax)));
		}
		List<TakeoffLine> together = lines(measures, home, stock, amounts);
		return new HomeTakeoff(home.getName() == null ? "" : home.getName(), //$NON-NLS-1$
				home.getCurrency() == null ? "" : home.getCurrency(), together, TakeoffTotals.of(together, tax), rooms); //$NON-NLS-1$
	}

	private List<TakeoffLine> lines(List<RoomMeasure> rooms, Home home, CutStock stock, Amounts amounts) {
		PriceBook prices = PriceBook.of(home);
		List<TakeoffLine> lines = new ArrayList<>(new MouldingLines(profiles, home, prices, amounts).of(rooms, stock));
		lines.addAll(new PaintLines(profiles, prices, amounts).of(rooms));
		lines.addAll(new FixingLines(prices, amounts).of(rooms));
		lines.addAll(new SundryLines(prices, amounts).of(rooms));
		return lines;
	}
}
