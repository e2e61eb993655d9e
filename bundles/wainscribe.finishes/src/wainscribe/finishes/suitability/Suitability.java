// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.suitability;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;

import wainscribe.finishes.air.MoistAir;
import wainscribe.finishes.coating.CoatingSystem;
import wainscribe.finishes.surface.OldSurface;
import wainscribe.model.Binder;
import wainscribe.model.GlossLevel;
import wainscribe.model.Paint;
import wainscribe.model.Surface;

/**
 * Says why a paint does not suit its place: too little for the damp, the wrong binder for the old coat, or air that no one should paint in.
 * Limits: scrub class 2 for washable walls (EN 13300 classes), a passed mildew test (ASTM D3273), at most 85 % humidity and a surface 3 degrees
 * above the dew point while painting (US municipal paint specification; MIL-HDBK-1110), level G3 for damp walls (common practice). What is
 * decided for the paint counts before what its kind can do.
 */
public final class Suitability {

	private static final int WASHABLE = 2;
	private static final double DEW_MARGIN = 3;

	private final RoomAir room;
	private final CoatingSystem system;
	private final List<String> reasons = new ArrayList<>();

	private Suitability(RoomAir room, CoatingSystem system) {
		this.room = room;
		this.system = system;
	}

	/** Returns the reasons against a paint, none where it suits. */
	public static List<String> against(RoomAir room, Paint paint, CoatingSystem system, OldSurface old) {
		Suitability suitability = new Suitability(room, system);
		suitability.damp(paint);
		suitability.oldCoat(old);
		suitability.airNow();
		return List.copyOf(suitability.reasons);
	}

	private void damp(Paint paint) {
		Surface surface = paint.getZone() == null ? Surface.WALLS : paint.getZone().getSurface();
		if (!room.isHumid() || surface == Surface.FLOOR) {
			return;
		}
		GlossLevel gloss = paint.getGloss() == GlossLevel.UNRECORDED ? system.gloss() : paint.getGloss();
		int scrub = paint.getScrub() == null ? system.scrub() : paint.getScrub();
		boolean mildew = paint.getMildew() == null ? system.mildew() : paint.getMildew();
		if (system.binder() == Binder.LIMEWASH) {
			reasons.add(Messages.Suitability_LimewashInDamp);
			return;
		}
		if (!mildew) {
			reasons.add(Messages.Suitability_Mildew);
		}
		if (surface != Surface.CEILING && gloss.getValue() < GlossLevel.G3_VALUE) {
			reasons.add(NLS.bind(Messages.Suitability_Gloss, gloss.getLiteral()));
		}
		if (surface != Surface.CEILING && scrub > WASHABLE) {
			reasons.add(NLS.bind(Messages.Suitability_Scrub, String.valueOf(scrub)));
		}
	}

	private void oldCoat(OldSurface old) {
		if (old.binder() == Binder.LIMEWASH && system.binder() != Binder.LIMEWASH) {
			reasons.add(Messages.Suitability_OverLimewash);
		}
		if (system.binder() == Binder.LIMEWASH && old.binder() != Binder.LIMEWASH && old.binder() != Binder.UNRECORDED) {
			reasons.add(Messages.Suitability_LimewashOverPaint);
		}
	}

	private void airNow() {
		room.air().ifPresent(air -> {
			if (air.temperature() < system.coldest() || air.temperature() > system.warmest()) {
				reasons.add(NLS.bind(Messages.Suitability_Temperature,
						new Object[] { shown(air.temperature()), shown(system.coldest()), shown(system.warmest()) }));
			}
			if (air.humidity() * 100 > system.dampest()) {
				reasons.add(NLS.bind(Messages.Suitability_Humidity, shown(air.humidity() * 100), shown(system.dampest())));
			}
			room.surface().ifPresent(surface -> surface(air, surface));
		});
	}

	private void surface(MoistAir air, double surface) {
		if (surface < air.dewPoint() + DEW_MARGIN) {
			reasons.add(NLS.bind(Messages.Suitability_Dew, new Object[] { shown(surface), shown(air.dewPoint()), shown(DEW_MARGIN) }));
		} else if (surface < system.coldest()) {
			reasons.add(NLS.bind(Messages.Suitability_ColdSurface, shown(surface), shown(system.coldest())));
		}
	}

	private static String shown(double value) {
		double rounded = Math.round(value * 10) / 10.0;
		return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
	}
}
