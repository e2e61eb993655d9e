// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Opening;
import wainscribe.model.OpeningKind;
import wainscribe.model.PriceUnit;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;

/** What painting uses up beside paint: sandpaper and masking tape. */
record SundryLines(PriceBook prices, Amounts amounts) {

	private static final int SHOWN = 2;

	List<TakeoffLine> of(List<RoomMeasure> rooms) {
		List<TakeoffLine> lines = new ArrayList<>();
		BigDecimal trim = rooms.stream().map(room -> Amounts.metres(room.cutList().total())).reduce(BigDecimal.ZERO, BigDecimal::add);
		if (trim.signum() > 0) {
			lines.add(sandpaper(trim));
		}
		List<RoomMeasure> painted = rooms.stream().filter(SundryLines::isPainted).toList();
		if (!painted.isEmpty()) {
			lines.add(tape(painted));
		}
		return lines;
	}

	private static boolean isPainted(RoomMeasure room) {
		return !RoomPaints.of(room.design().home(), room.design().room()).all().isEmpty();
	}

	private TakeoffLine sandpaper(BigDecimal metres) {
		BigDecimal exact = metres.multiply(Practice.PASSES).divide(Practice.SHEET_METRES, MathContext.DECIMAL64);
		BigDecimal sheets = exact.setScale(0, RoundingMode.CEILING);
		String formula = NLS.bind(Messages.SundryLines_SandpaperFormula, new Object[] { amounts.metresShown(metres),
				Amounts.plain(Practice.PASSES), Amounts.plain(Practice.SHEET_METRES), Amounts.beforeRounding(exact) });
		TakeoffLine line = new TakeoffLine(QuantityKey.SANDPAPER, Messages.Group_Sundries, Messages.SundryLines_Sandpaper, formula,
				Messages.Source_CommonPractice, sheets, Messages.Unit_Sheet, List.of(), null);
		return prices.bought(line, sheets, PriceUnit.EACH, Messages.Unit_Sheet);
	}

	private TakeoffLine tape(List<RoomMeasure> rooms) {
		BigDecimal ceiling = BigDecimal.ZERO;
		BigDecimal floor = BigDecimal.ZERO;
		BigDecimal casings = BigDecimal.ZERO;
		for (RoomMeasure room : rooms) {
			for (Wall wall : room.design().room().getWalls()) {
				ceiling = ceiling.add(metres(wall.getLength()));
				floor = floor.add(metres(wall.getLength()).subtract(doors(wall)).max(BigDecimal.ZERO));
				casings = casings.add(casings(wall));
			}
		}
		BigDecimal need = ceiling.add(floor).add(casings).multiply(Practice.TAPE_ALLOWANCE);
		String formula = NLS.bind(Messages.SundryLines_TapeFormula, new Object[] { amounts.metresShown(ceiling),
				amounts.metresShown(floor), amounts.metresShown(casings), Amounts.plain(Practice.TAPE_ALLOWANCE),
				amounts.metresShown(need) });
		TakeoffLine line = new TakeoffLine(QuantityKey.TAPE, Messages.Group_Sundries, Messages.SundryLines_Tape, formula,
				Messages.Source_CommonPractice, need.setScale(SHOWN, RoundingMode.HALF_UP), "m", List.of(), null); //$NON-NLS-1$
		return prices.bought(line, need, PriceUnit.METRE, "m"); //$NON-NLS-1$
	}

	private static BigDecimal doors(Wall wall) {
		return wall.getOpenings().stream().filter(opening -> opening.getKind() == OpeningKind.DOOR)
				.map(opening -> metres(opening.getWidth())).reduce(BigDecimal.ZERO, BigDecimal::add);
	}

	private static BigDecimal casings(Wall wall) {
		return wall.getOpenings().stream().filter(SundryLines::isCased)
				.map(opening -> Amounts.metres(ExistingTrimArea.casingLength(opening))).reduce(BigDecimal.ZERO, BigDecimal::add);
	}

	private static boolean isCased(Opening opening) {
		return opening.getCasing() != null && opening.getCasing().signum() > 0;
	}

	private static BigDecimal metres(Length length) {
		return length == null ? BigDecimal.ZERO : Amounts.metres(length);
	}
}
