// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.backdrop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import wainscribe.profile.section.Spot;

/** A picture gets its scale by two points, stays where the first one is, and is noted in one line. */
class BackdropTest {

	private final Backdrop backdrop = new Backdrop(Path.of("section | one.png"), 0.1, 5, 7, true);

	@Test
	void twoPointsGiveTheScale() {
		Spot first = new Spot(10, 20);
		Backdrop scaled = backdrop.scaled(first, new Spot(10, 30), 25);
		assertEquals(0.25, scaled.scale(), 1e-12);
		assertEquals((backdrop.up() - first.x()) / backdrop.scale(), (scaled.up() - first.x()) / scaled.scale(), 1e-9);
		assertEquals((backdrop.out() - first.y()) / backdrop.scale(), (scaled.out() - first.y()) / scaled.scale(), 1e-9);
	}

	@Test
	void theNoteIsReadBack() {
		assertEquals(Optional.of(backdrop), Backdrop.read(backdrop.text()));
		assertEquals(Optional.empty(), Backdrop.read("0|1|2|true|x.png"));
		assertEquals(Optional.empty(), Backdrop.read("no backdrop"));
		assertEquals(Optional.empty(), Backdrop.read(null));
	}

	@Test
	void aScaleThatIsNoneIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> new Backdrop(Path.of("x.png"), 0, 0, 0, true));
		assertThrows(IllegalArgumentException.class, () -> backdrop.scaled(new Spot(1, 1), new Spot(1, 1), 5));
	}
}
