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

/**
 * Takes off everything to buy for the designs of a home and prices it from the home's price list.
 * <p>
 * Each quantity shows its formula with the numbers put in and where its rates come from. The rates are defaults of common
 * practice and general guides; the label of the product bought rules. What is not in the price list stays unpriced.
 */
public final class Takeoffs {

	private final ProfileCatalogue profiles;
	private final CutLists cutLists;

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
	 * Takes off a home.
	 *
	 * @param home    the home, with its prices and tax
	 * @param designs the designs of its rooms, in the order shown; may be some of them only
	 * @return the rooms one by one, and all of them bought together
	 */
	public HomeTakeoff of(Home home, List<RoomDesign> designs) {
		Amounts amounts = new Amounts(home.getUnits() == null ? LengthUnit.MILLIMETRE : home.getUnits());
		PriceBook prices = PriceBook.of(home);
		BigDecimal tax = home.getTax() == null ? BigDecimal.ZERO : home.getTax().inBaseUnit();
		List<RoomMeasure> measures = designs.stream().map(design -> new RoomMeasure(design, cutLists.of(design))).toList();
		List<RoomTakeoff> rooms = new ArrayList<>();
		for (RoomMeasure measure : measures) {
			List<TakeoffLine> lines = lines(List.of(measure), prices, amounts);
			rooms.add(new RoomTakeoff(measure.cutList().room(), lines, TakeoffTotals.of(lines, tax)));
		}
		List<TakeoffLine> together = lines(measures, prices, amounts);
		return new HomeTakeoff(home.getName() == null ? "" : home.getName(), //$NON-NLS-1$
				home.getCurrency() == null ? "" : home.getCurrency(), together, TakeoffTotals.of(together, tax), rooms); //$NON-NLS-1$
	}

	private List<TakeoffLine> lines(List<RoomMeasure> rooms, PriceBook prices, Amounts amounts) {
		List<TakeoffLine> lines = new ArrayList<>(new MouldingLines(profiles, prices, amounts).of(rooms));
		lines.addAll(new PaintLines(profiles, prices, amounts).of(rooms));
		lines.addAll(new FixingLines(prices, amounts).of(rooms));
		lines.addAll(new SundryLines(prices, amounts).of(rooms));
		return lines;
	}
}
