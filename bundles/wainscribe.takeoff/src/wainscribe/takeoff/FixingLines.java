// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.eclipse.osgi.util.NLS;

import wainscribe.fabrication.PieceKind;
import wainscribe.model.PriceUnit;
import wainscribe.model.RoomUse;
import wainscribe.model.length.LengthFormat;

/** What holds mouldings on the wall and closes their joints: adhesive, brads, nails, caulk and filler. */
record FixingLines(PriceBook prices, Amounts amounts) {

	private static final Set<RoomUse> WET = EnumSet.of(RoomUse.BATH_WITH_SHOWER, RoomUse.BATH_WITH_TUB, RoomUse.LAUNDRY);
	private static final int LITRE = 3;

	List<TakeoffLine> of(List<RoomMeasure> rooms) {
		List<TakeoffLine> lines = new ArrayList<>();
		BigDecimal frames = RoomMeasure.metres(rooms, PieceKind.FRAME).add(RoomMeasure.metres(rooms, PieceKind.STRIP));
		BigDecimal rail = RoomMeasure.metres(rooms, PieceKind.RAIL);
		BigDecimal base = RoomMeasure.metres(rooms, PieceKind.BASE);
		BigDecimal crown = RoomMeasure.metres(rooms, PieceKind.CROWN);
		if (frames.add(rail).add(base).add(crown).signum() == 0) {
			return lines;
		}
		if (frames.add(rail).signum() > 0) {
			lines.add(adhesive(frames, rail));
		}
		int framePieces = RoomMeasure.count(rooms, PieceKind.FRAME) + RoomMeasure.count(rooms, PieceKind.STRIP);
		int runPieces = RoomMeasure.count(rooms, PieceKind.RAIL) + RoomMeasure.count(rooms, PieceKind.BASE)
				+ RoomMeasure.count(rooms, PieceKind.CROWN);
		BigDecimal brads = nails(framePieces, frames);
		BigDecimal nails = nails(runPieces, rail.add(base).add(crown));
		if (framePieces > 0) {
			lines.add(nailLine(QuantityKey.BRADS, Messages.FixingLines_Brads + wet(rooms), framePieces, frames, brads));
		}
		if (runPieces > 0) {
			lines.add(nailLine(QuantityKey.NAILS, Messages.FixingLines_Nails + nailLength(rooms) + wet(rooms), runPieces,
					rail.add(base).add(crown), nails));
		}
		lines.add(filler(brads.add(nails)));
		lines.add(caulk(frames, rail, base, crown));
		return lines;
	}

	private static String wet(List<RoomMeasure> rooms) {
		boolean wet = rooms.stream().anyMatch(room -> WET.contains(room.design().room().getUse()));
		return wet ? Messages.FixingLines_WetRooms : ""; //$NON-NLS-1$
	}

	private String nailLength(List<RoomMeasure> rooms) {
		List<String> lengths = rooms.stream().map(room -> room.design().brief().nail()).filter(Objects::nonNull).distinct()
				.map(length -> LengthFormat.asShown(length, amounts.unit())).toList();
		return lengths.isEmpty() ? "" : ", " + String.join(", ", lengths); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private TakeoffLine adhesive(BigDecimal frames, BigDecimal rail) {
		BigDecimal exact = frames.add(rail).divide(Practice.ADHESIVE_METRES, MathContext.DECIMAL64);
		String formula = NLS.bind(Messages.FixingLines_AdhesiveFormula, new Object[] { amounts.metresShown(frames),
				amounts.metresShown(rail), Amounts.plain(Practice.ADHESIVE_METRES), Amounts.beforeRounding(exact) });
		return whole(QuantityKey.ADHESIVE, Messages.FixingLines_Adhesive, formula, Messages.Source_AdhesiveLength, exact,
				Messages.Unit_Cartridge);
	}

	private TakeoffLine caulk(BigDecimal frames, BigDecimal rail, BigDecimal base, BigDecimal crown) {
		BigDecimal two = BigDecimal.valueOf(2);
		BigDecimal edges = frames.multiply(two).add(rail.multiply(two)).add(base).add(crown.multiply(two));
		// Metres by square millimetres are millilitres.
		BigDecimal exact = edges.multiply(Practice.CAULK_SECTION).multiply(Practice.CAULK_ALLOWANCE).divide(Practice.CARTRIDGE,
				MathContext.DECIMAL64);
		String formula = NLS.bind(Messages.FixingLines_CaulkFormula,
				new Object[] { amounts.metresShown(frames), amounts.metresShown(rail), amounts.metresShown(base),
						amounts.metresShown(crown), Amounts.plain(Practice.CAULK_SECTION),
						Amounts.plain(Practice.CAULK_ALLOWANCE), Amounts.plain(Practice.CARTRIDGE), Amounts.beforeRounding(exact) });
		return whole(QuantityKey.CAULK, Messages.FixingLines_Caulk, formula, Messages.Source_CaulkFillet, exact,
				Messages.Unit_Cartridge);
	}

	private static BigDecimal nails(int pieces, BigDecimal metres) {
		return BigDecimal.valueOf(pieces).multiply(Practice.NAILS_AT_ENDS)
				.add(metres.divide(Practice.NAIL_SPACING, MathContext.DECIMAL64)).multiply(Practice.NAIL_ALLOWANCE)
				.setScale(0, RoundingMode.CEILING);
	}

	private TakeoffLine nailLine(String key, String item, int pieces, BigDecimal metres, BigDecimal count) {
		String formula = NLS.bind(Messages.FixingLines_NailFormula,
				new Object[] { pieces, Amounts.plain(Practice.NAILS_AT_ENDS), amounts.metresShown(metres),
						Amounts.plain(Practice.NAIL_SPACING), Amounts.plain(Practice.NAIL_ALLOWANCE), Amounts.plain(count) });
		return whole(key, item, formula, Messages.Source_CommonPractice, count, Messages.Unit_Piece);
	}

	private TakeoffLine filler(BigDecimal holes) {
		BigDecimal millilitres = holes.multiply(Practice.FILLER_A_HOLE);
		BigDecimal litres = millilitres.movePointLeft(LITRE);
		String formula = NLS.bind(Messages.FixingLines_FillerFormula, new Object[] { Amounts.plain(holes),
				Amounts.plain(Practice.FILLER_A_HOLE), Amounts.plain(millilitres) });
		TakeoffLine line = new TakeoffLine(QuantityKey.FILLER, Messages.Group_Fixing, Messages.FixingLines_Filler, formula,
				Messages.Source_CommonPractice, litres, "L", List.of(), null); //$NON-NLS-1$
		return prices.bought(line, litres, PriceUnit.LITRE, "L"); //$NON-NLS-1$
	}

	private TakeoffLine whole(String key, String item, String formula, String source, BigDecimal exact, String unit) {
		BigDecimal count = exact.setScale(0, RoundingMode.CEILING);
		TakeoffLine line = new TakeoffLine(key, Messages.Group_Fixing, item, formula, source, count, unit, List.of(), null);
		return prices.bought(line, count, PriceUnit.EACH, unit);
	}
}
