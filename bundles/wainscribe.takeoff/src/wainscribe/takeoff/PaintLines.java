// SPDX-License-Identifier: EPL-2.0
package wainscribe.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.Binder;
import wainscribe.model.GlossLevel;
import wainscribe.model.Paint;
import wainscribe.model.PriceUnit;
import wainscribe.profile.ProfileCatalogue;

/** Paint and primer in litres: area by coats and spreading rate, and touch-up paint for each colour. */
record PaintLines(ProfileCatalogue profiles, PriceBook prices, Amounts amounts) {

	private static final int SHOWN = 2;

	List<TakeoffLine> of(List<RoomMeasure> rooms) {
		List<PaintZone> zones = rooms.stream()
				.flatMap(room -> new PaintZones(room, new Girth(profiles), amounts).all().stream()).toList();
		Map<String, List<PaintZone>> byPaint = new LinkedHashMap<>();
		zones.forEach(zone -> byPaint.computeIfAbsent(key(zone.paint()), any -> new ArrayList<>()).add(zone));
		List<TakeoffLine> lines = new ArrayList<>();
		byPaint.forEach((key, ofPaint) -> lines.add(paint(key, ofPaint)));
		BigDecimal primed = zones.stream().map(PaintZone::primed).reduce(BigDecimal.ZERO, BigDecimal::add);
		if (primed.signum() > 0) {
			lines.add(primer(primed));
		}
		return lines;
	}

	private static String key(Paint paint) {
		if (paint.getName() != null && !paint.getName().isBlank()) {
			return paint.getName();
		}
		return RoomPaints.surface(paint).getLiteral() + (paint.getColour() == null ? "" : ' ' + paint.getColour()); //$NON-NLS-1$
	}

	private TakeoffLine paint(String key, List<PaintZone> zones) {
		List<String> parts = new ArrayList<>();
		BigDecimal litres = BigDecimal.ZERO;
		boolean known = false;
		for (PaintZone zone : zones) {
			if (zone.area() == null) {
				parts.add(zone.room() + ": " + zone.formula()); //$NON-NLS-1$
				continue;
			}
			known = true;
			litres = litres.add(zone.litres());
			parts.add(zone.room() + ": " + zone.formula() + NLS.bind(Messages.PaintLines_Litres, //$NON-NLS-1$
					new Object[] { amounts.areaShown(zone.painted()), zone.coats(), Amounts.plain(zone.spread()),
							amounts.litresShown(zone.litres()) }));
		}
		BigDecimal need = litres.add(Practice.SPARE_PAINT);
		if (known) {
			parts.add(NLS.bind(Messages.PaintLines_Spare, amounts.litresShown(Practice.SPARE_PAINT), amounts.litresShown(need)));
		}
		TakeoffLine line = new TakeoffLine(key, Messages.Group_Paint, item(key, zones.getFirst().paint()),
				String.join("; ", parts), Messages.Source_SpreadFinish, known ? shown(need) : null, "L", List.of(), null); //$NON-NLS-1$ //$NON-NLS-2$
		return known ? prices.bought(line, need, PriceUnit.LITRE, "L") : line; //$NON-NLS-1$
	}

	private static String item(String key, Paint paint) {
		String gloss = paint.getGloss() == GlossLevel.UNRECORDED ? "" : paint.getGloss().getLiteral(); //$NON-NLS-1$
		String binder = paint.getBinder() == Binder.UNRECORDED ? "" : paint.getBinder().getLiteral(); //$NON-NLS-1$
		String colour = paint.getColour() == null || key.contains(paint.getColour()) ? "" : paint.getColour(); //$NON-NLS-1$
		return String.join(", ", Stream.of(key, colour, binder, gloss).filter(part -> !part.isEmpty()).toList()); //$NON-NLS-1$
	}

	private TakeoffLine primer(BigDecimal area) {
		BigDecimal litres = PaintZone.litres(area, 1, Practice.PRIMER_SPREAD);
		String formula = NLS.bind(Messages.PaintLines_Primer, new Object[] { amounts.areaShown(area),
				Amounts.plain(Practice.PRIMER_SPREAD), amounts.litresShown(litres) });
		TakeoffLine line = new TakeoffLine(QuantityKey.PRIMER, Messages.Group_Paint, Messages.PaintLines_PrimerItem, formula,
				Messages.Source_SpreadPrimer, shown(litres), "L", List.of(), null); //$NON-NLS-1$
		return prices.bought(line, litres, PriceUnit.LITRE, "L"); //$NON-NLS-1$
	}

	private static BigDecimal shown(BigDecimal litres) {
		return litres.setScale(SHOWN, RoundingMode.HALF_UP);
	}
}
