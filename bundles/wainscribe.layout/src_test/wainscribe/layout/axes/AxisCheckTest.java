// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.axes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import wainscribe.layout.FrameOutline;
import wainscribe.layout.RoomLayout;
import wainscribe.layout.Rooms;
import wainscribe.model.Axis;
import wainscribe.model.FixtureType;
import wainscribe.model.WainscribeFactory;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;

/** A layout is compared with axes; expected distances follow from equal gaps by hand. */
class AxisCheckTest {

	private static Rooms room() {
		return Rooms.millimetres().height("2400").rail("900").gap("80");
	}

	private static Rooms marked(Rooms rooms, int... at) {
		return rooms.shape(wall -> {
			for (int each : at) {
				Axis axis = WainscribeFactory.eINSTANCE.createAxis();
				axis.setAt(Length.ofMillimetres(each));
				wall.getAxes().add(axis);
			}
		});
	}

	@Test
	void theMiddleOfAnEvenWallIsCentred() {
		AxisFit fit = AxisCheck.of(marked(room().wall("A", "3000"), 1500).layout()).getFirst();
		assertEquals(Length.ZERO, fit.off());
		assertTrue(fit.isCentred());
		assertEquals("centred", fit.note(LengthUnit.MILLIMETRE));
	}

	@Test
	void anAxisBesideTheMiddleIsOffByThatMuch() {
		RoomLayout layout = marked(room().wall("A", "3000"), 1520, 1480).layout();
		List<AxisFit> fits = AxisCheck.of(layout);
		assertEquals(List.of(Length.ofMillimetres(20), Length.ofMillimetres(-20)), fits.stream().map(AxisFit::off).toList());
		assertFalse(fits.getFirst().isCentred());
		assertTrue(fits.getFirst().sentence(LengthUnit.MILLIMETRE).endsWith("is off centre, 20 mm to the right"),
				fits.getFirst().sentence(LengthUnit.MILLIMETRE));
		assertEquals("20 mm left", fits.getLast().note(LengthUnit.MILLIMETRE));
	}

	@Test
	void frameOrSpaceIsNamedWhicheverIsNearer() {
		RoomLayout layout = marked(room().wall("A", "3000"), 1500).layout();
		List<FrameOutline> frames = layout.frames().toList();
		AxisFit fit = AxisCheck.of(layout).getFirst();
		boolean odd = frames.size() % 2 == 1;
		assertEquals(odd, fit.isFrame());
		int middle = frames.size() / 2;
		assertEquals(odd ? List.of(frames.get(middle).id()) : List.of(frames.get(middle - 1).id(), frames.get(middle).id()),
				fit.frames());
	}

	@Test
	void aDoorInTheMiddleHasAnAxisOfItsOwn() {
		AxisFit fit = AxisCheck.of(room().wall("A", "4000").door("1600", "800", "2000", "80").layout()).getFirst();
		assertNull(fit.axis().marked());
		assertEquals(Length.ofMillimetres(2000), fit.axis().at());
		assertEquals(2, fit.frames().size());
		assertEquals(Length.ZERO, fit.off());
	}

	@Test
	void whatStandsAsideHasNone() {
		RoomLayout layout = room().wall("A", "4000").fixture(FixtureType.MIRROR, "1620", "1000", "800", "800").layout();
		assertEquals(List.of(), AxisCheck.of(layout), "its axis is 20 mm beside the middle");
	}

	@Test
	void aWallWithoutFramesIsNotCompared() {
		assertEquals(List.of(), AxisCheck.of(marked(room().wall("A", "300"), 150).layout()));
	}
}
