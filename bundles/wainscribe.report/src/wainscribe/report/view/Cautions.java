// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

import java.util.ArrayList;
import java.util.List;

import wainscribe.model.FixtureType;
import wainscribe.model.Home;
import wainscribe.model.length.Length;
import wainscribe.report.PackContent;
import wainscribe.report.RoomContent;

/** Chooses the cautions that a home needs. */
final class Cautions {

	/** Consumer use of lead paint ended in the United States in 1978 (16 CFR 1303). */
	private static final int LEAD_UNTIL = 1978;
	/** The last uses of asbestos in buildings ended in the United Kingdom in 1999 (SI 1999/2373). */
	private static final int ASBESTOS_UNTIL = 2000;

	private Cautions() {
	}

	static List<Caution> of(PackContent content) {
		List<Caution> cautions = new ArrayList<>();
		cautions.add(new Caution("Local codes and licensed trades decide",
				"This pack is advice. Rules differ from place to place and change; where it touches wiring, gas, water, fire,"
						+ " escape, structure or rented homes, the local authority and a licensed trade have the last word."));
		old(content.home(), cautions);
		cautions.add(new Caution("What is inside the wall",
				"Before each nail or screw find cables, pipes and studs with a detector and with your eyes: wires run up or"
						+ " across from every plate, pipes from every tap. Keep nails short, and switch the circuit off while you"
						+ " work beside a plate."));
		if (content.rooms().stream().anyMatch(Cautions::isBoarded)) {
			cautions.add(new Caution("Electrical boxes behind added boards",
					"A box must end flush with the new face and must never be covered. Bringing it forward is an"
							+ " electrician's work."));
		}
		if (content.rooms().stream().anyMatch(Cautions::hasGlass)) {
			cautions.add(new Caution("Heavy glass",
					"A mirror is carried by the wall behind it, not by its frame. Check weight and fixing; lift with two"
							+ " people and gloves."));
		}
		cautions.add(new Caution("While working",
				"Cut and sand with dust collection and a mask; MDF dust is fine. Ventilate while painting and follow the tin's"
						+ " sheet. Stand a ladder on firm ground and never reach far from it."));
		return cautions;
	}

	private static void old(Home home, List<Caution> cautions) {
		Integer built = home.getBuilt();
		String age = built == null ? "The year of building is not recorded. " : "This home dates from " + built + ". ";
		if (built == null || built < LEAD_UNTIL) {
			cautions.add(new Caution("Old paint may hold lead", age
					+ "Have paint layers tested before anything is sanded, scraped, heated or cut. If there is lead, keep"
					+ " children and pregnant women away; in many places only certified trades may do the work."));
		}
		if (built == null || built < ASBESTOS_UNTIL) {
			cautions.add(new Caution("Asbestos", age
					+ "Textured coatings, boards, floor tiles and their glue, and pipe lagging may hold asbestos. Leave them"
					+ " alone until a laboratory has looked at a sample taken by a trained person."));
		}
	}

	private static boolean isBoarded(RoomContent room) {
		Length board = room.design().brief().board();
		return board != null && board.signum() > 0;
	}

	private static boolean hasGlass(RoomContent room) {
		return room.design().room().getWalls().stream().flatMap(wall -> wall.getFixtures().stream())
				.anyMatch(fixture -> fixture.getType() == FixtureType.MIRROR);
	}
}
