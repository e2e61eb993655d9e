// SPDX-License-Identifier: EPL-2.0
package wainscribe.finishes.suitability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import wainscribe.finishes.coating.CoatingCatalogue;
import wainscribe.finishes.surface.OldSurface;
import wainscribe.model.Binder;
import wainscribe.model.GlossLevel;
import wainscribe.model.Paint;
import wainscribe.model.Room;
import wainscribe.model.RoomUse;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.measure.Measure;
import wainscribe.model.measure.MeasureUnit;

class SuitabilityTest {

	private static final WainscribeFactory FACTORY = WainscribeFactory.eINSTANCE;

	@Test
	void flatPaintDoesNotSuitAShowerRoom() {
		List<String> reasons = against(room(RoomUse.BATH_WITH_SHOWER, 20, 45, 18), paint(GlossLevel.G1, Binder.ACRYLIC));
		assertEquals(3, reasons.size(), reasons::toString);
	}

	@Test
	void washablePaintSuitsAShowerRoom() {
		Paint paint = paint(GlossLevel.G4, Binder.ACRYLIC);
		paint.setMildew(true);
		assertEquals(List.of(), against(room(RoomUse.BATH_WITH_SHOWER, 20, 45, 18), paint));
	}

	@Test
	void flatPaintSuitsABedroom() {
		assertEquals(List.of(), against(room(RoomUse.LIVING, 20, 45, 18), paint(GlossLevel.G1, Binder.ACRYLIC)));
	}

	/** 20 degrees at 60 % have their dew point at 12.0 degrees (ASHRAE equation), so a wall at 14 is within 3 degrees of it. */
	@Test
	void aWallNearTheDewPointIsNotPaintedNow() {
		Paint washable = paint(GlossLevel.G4, Binder.ACRYLIC);
		washable.setMildew(true);
		List<String> near = against(room(RoomUse.HALL, 20, 60, 14), washable);
		assertEquals(1, near.size());
		assertTrue(near.getFirst().contains("12 "), near::toString);
		assertEquals(List.of(), against(room(RoomUse.HALL, 20, 60, 16), washable));
	}

	@Test
	void limewashSuitsNoDampRoom() {
		assertEquals(1, against(room(RoomUse.BATH_WITH_TUB, 20, 45, 18), paint(GlossLevel.G1, Binder.LIMEWASH)).size());
	}

	@Test
	void aColdWallMakesADryRoomHumid() {
		RoomAir cold = RoomAir.of(room(RoomUse.BEDROOM, 20, 60, 11), Optional.of(30.0));
		assertTrue(cold.isHumid());
		assertTrue(cold.day().orElseThrow().condensation() > 0);
		assertFalse(RoomAir.of(room(RoomUse.BEDROOM, 20, 40, 18), Optional.of(60.0)).isHumid());
	}

	@Test
	void nothingMeasuredIsNotGuessed() {
		RoomAir unknown = RoomAir.of(FACTORY.createRoom(), Optional.of(30.0));
		assertTrue(unknown.air().isEmpty() && unknown.day().isEmpty());
	}

	private static List<String> against(Room room, Paint paint) {
		return Suitability.against(RoomAir.of(room, Optional.of(60.0)), paint, CoatingCatalogue.builtIn().nearest(paint).orElseThrow(),
				OldSurface.unknown(FACTORY.createHome()));
	}

	private static Paint paint(GlossLevel gloss, Binder binder) {
		Paint paint = FACTORY.createPaint();
		paint.setGloss(gloss);
		paint.setBinder(binder);
		return paint;
	}

	private static Room room(RoomUse use, int temperature, int humidity, int surface) {
		Room room = FACTORY.createRoom();
		room.setUse(use);
		room.setAir(new Measure(BigDecimal.valueOf(temperature), MeasureUnit.CELSIUS));
		room.setHumidity(new Measure(BigDecimal.valueOf(humidity), MeasureUnit.PERCENT));
		room.setSurfaceTemperature(new Measure(BigDecimal.valueOf(surface), MeasureUnit.CELSIUS));
		return room;
	}
}
