// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing.export;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;

import wainscribe.drawing.Drawing;
import wainscribe.drawing.SampleRoom;
import wainscribe.drawing.elevation.ElevationDrawing;
import wainscribe.drawing.elevation.ElevationOptions;
import wainscribe.model.FixtureType;
import wainscribe.model.OpeningKind;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;

/** A wall of 3000 x 2500 mm with a frame, a door and a radiator, written by an exporter. */
final class Exported {

	private Exported() {
	}

	static Drawing drawing(String wall, LengthUnit unit) {
		SampleRoom room = new SampleRoom(unit, 3000, 2500).frame(100, 200, 1000, 500);
		room.wall().setName(wall);
		room.opening(OpeningKind.DOOR, 2000, 0, 800, 2000);
		room.fixture(FixtureType.RADIATOR, 1250, 100, 500, 600);
		return new ElevationDrawing(new ProfileCatalogue(List.of())).draw(room.design(), room.wall(),
				ElevationOptions.of(room.home()));
	}

	static byte[] bytes(ElevationExporter exporter, String wall) throws IOException {
		return bytes(exporter, drawing(wall, LengthUnit.MILLIMETRE));
	}

	static byte[] bytes(ElevationExporter exporter, Drawing drawing) throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		exporter.write(drawing, out);
		return out.toByteArray();
	}
}
