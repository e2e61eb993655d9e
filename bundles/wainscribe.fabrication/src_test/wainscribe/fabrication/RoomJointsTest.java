// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wainscribe.fabrication.SampleRoom.mm;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

import wainscribe.layout.RailBand;
import wainscribe.model.Material;
import wainscribe.model.SawScale;
import wainscribe.model.length.Length;
import wainscribe.profile.BuiltInProfiles;

/** Laws of the runs of rooms with any corners, doors and studs. */
class RoomJointsTest {

	private static final double THICKNESS = 20;
	private final CutLists cutLists = new CutLists(BuiltInProfiles.catalogue());

	/** A door and the studs of a wall, from its left end. */
	private record WallPlan(int length, int angle, int door, boolean thinCasing, List<Integer> studs) {

		/** The wall seen in a looking glass; the corner at its left end becomes the one at its right end. */
		WallPlan mirrored(int angleBefore) {
			return new WallPlan(length, angleBefore, door < 0 ? -1 : length - door - 800, thinCasing,
					studs.stream().map(x -> length - x).toList());
		}
	}

	private record RoomPlan(List<WallPlan> walls, boolean open, boolean fine, Material material) {

		static RoomPlan of(Random random) {
			List<WallPlan> walls = new ArrayList<>();
			int count = 3 + random.nextInt(5);
			for (int i = 0; i < count; i++) {
				// lengths of neighbours differ, so that it does not depend on the walking order which of them runs through
				int length = 2 * (500 + random.nextInt(1500)) + i % 2;
				int door = length > 1400 && random.nextInt(3) == 0 ? 100 + random.nextInt(length - 1100) : -1;
				List<Integer> studs = new ArrayList<>();
				for (int x = random.nextInt(400); x < length; x += 300 + random.nextInt(300)) {
					studs.add(x);
				}
				walls.add(new WallPlan(length, List.of(60, 87, 88, 90, 91, 93, 135, 222, 270, 271).get(random.nextInt(10)), door,
						random.nextBoolean(), studs));
			}
			return new RoomPlan(walls, random.nextBoolean(), random.nextBoolean(),
					random.nextBoolean() ? Material.MDF : Material.POLYURETHANE);
		}

		RoomPlan mirrored() {
			List<WallPlan> turned = new ArrayList<>();
			for (int i = walls.size() - 1; i >= 0; i--) {
				turned.add(walls.get(i).mirrored(walls.get((i + walls.size() - 1) % walls.size()).angle()));
			}
			return new RoomPlan(turned, open, fine, material);
		}

		SampleRoom room() {
			SampleRoom sample = new SampleRoom(2400);
			sample.room.setOpen(open);
			sample.rail = new RailBand(mm(840), mm(900), Length.ofMillimetres((long) THICKNESS));
			sample.base = mm(120);
			sample.stock = List.of(mm(2400), mm(1800));
			sample.material = material;
			sample.brief().setSaw(fine ? SawScale.TENTH : SawScale.HALF);
			for (WallPlan plan : walls) {
				var wall = sample.wall("W" + sample.room.getWalls().size(), plan.length(), String.valueOf(plan.angle()));
				if (plan.door() >= 0) {
					SampleRoom.door(wall, plan.door(), 800, 2000, 70).setCasingDepth(mm(plan.thinCasing() ? 15 : 25));
				}
				plan.studs().forEach(x -> SampleRoom.stud(wall, x));
			}
			return sample;
		}
	}

	private Stream<Piece> rails(SampleRoom sample) {
		return cutLists.of(sample.design()).pieces().stream().filter(piece -> piece.kind() == PieceKind.RAIL);
	}

	/** Law: on every wall the pieces stand end to end over all that no door takes, and none is longer than the stock. */
	@Property(tries = 300)
	void piecesCoverEachRunExactly(@ForAll long seed) {
		RoomPlan plan = RoomPlan.of(new Random(seed));
		Map<String, List<Piece>> byWall = rails(plan.room()).filter(piece -> !piece.isReturn())
				.collect(Collectors.groupingBy(Piece::wall));
		for (int i = 0; i < plan.walls().size(); i++) {
			WallPlan wall = plan.walls().get(i);
			List<Piece> pieces = byWall.getOrDefault("W" + i, List.of());
			Length x = Length.ZERO;
			for (Piece piece : pieces) {
				assertFalse(piece.longPoint().isMoreThan(mm(2400)), piece::toString);
				if (wall.door() >= 0 && !x.isMoreThan(mm(wall.door()))
						&& !piece.x0().isLessThan(mm(wall.door()))) {
					assertEquals(mm(wall.door() - 70).max(Length.ZERO), x);
					x = mm(wall.door() + 870);
				}
				assertEquals(x, piece.x0());
				x = piece.x1();
			}
			boolean endsAtDoor = wall.door() >= 0 && x.equals(mm(wall.door() - 70).max(Length.ZERO));
			assertTrue(x.equals(mm(wall.length())) || endsAtDoor && !mm(wall.door() + 870).isLessThan(mm(wall.length())), x::toString);
		}
	}

	/**
	 * Law: seen from above, the cuts of two pieces that share a joint, put together from their lengths and the saw's settings,
	 * are no further apart at any edge than is stated.
	 */
	@Property(tries = 300)
	void mitresCloseWithinTheStatedError(@ForAll long seed) {
		RoomPlan plan = RoomPlan.of(new Random(seed));
		List<Piece> rails = rails(plan.room()).filter(piece -> !piece.isReturn()).toList();
		for (int i = 0; i < rails.size(); i++) {
			Piece piece = rails.get(i);
			Piece next = rails.get((i + 1) % rails.size());
			Joint joint = piece.end().joint();
			if (joint == Joint.INSIDE_MITRE || joint == Joint.OUTSIDE_MITRE) {
				assertEquals(joint, next.start().joint());
				double corner = plan.walls().get(Integer.parseInt(piece.wall().substring(1))).angle();
				double stated = piece.end().setting().opening().doubleValue();
				double apart = apart(piece, next, corner);
				assertTrue(apart <= stated + 0.001, () -> apart + " apart, stated " + stated + " in " + piece);
			}
		}
	}

	/**
	 * How far the far points of a mitre are apart when the points at the wall (inside) or at the face (outside) touch: each far
	 * point lies one thickness square to its wall, and the tangent of its setting back or on along it.
	 */
	private static double apart(Piece piece, Piece next, double corner) {
		double turn = Math.toRadians(corner);
		double first = THICKNESS * Math.tan(Math.toRadians(piece.end().setting().turn().doubleValue()));
		double second = THICKNESS * Math.tan(Math.toRadians(next.start().setting().turn().doubleValue()));
		double sign = corner < 180 ? 1 : -1;
		// wall 1 runs along -x towards the corner at the origin, wall 2 leaves it at the inside angle; the room lies between them
		double x1 = -sign * first;
		double y1 = -THICKNESS;
		double dx = -Math.cos(turn);
		double dy = -Math.sin(turn);
		double x2 = sign * second * dx + THICKNESS * dy;
		double y2 = sign * second * dy - THICKNESS * dx;
		return Math.hypot(x1 - x2, y1 - y2);
	}

	/** Law: a room and its looking-glass image take the same pieces, cut the same way. */
	@Property(tries = 300)
	void theLookingGlassChangesNoPiece(@ForAll long seed) {
		RoomPlan plan = RoomPlan.of(new Random(seed));
		assertEquals(cuts(plan.room()), cuts(plan.mirrored().room()));
	}

	private List<String> cuts(SampleRoom sample) {
		List<Piece> pieces = cutLists.of(sample.design()).pieces();
		return Stream.concat(pieces.stream().map(RoomJointsTest::cut),
				pieces.stream().flatMap(piece -> Stream.of(piece.start(), piece.end())).map(RoomJointsTest::end)).sorted().toList();
	}

	/** Where two studs serve a run equally well either may be taken, so a scarfed piece is known by its length alone. */
	private static String cut(Piece piece) {
		boolean scarfed = piece.start().joint() == Joint.SCARF || piece.end().joint() == Joint.SCARF;
		String length = piece.kind() + " " + rounded(piece.longPoint());
		return scarfed ? length
				: length + " " + rounded(piece.shortPoint()) + Stream.of(piece.start(), piece.end()).map(RoomJointsTest::end).sorted().toList();
	}

	private static String end(PieceEnd end) {
		return end.joint() + " " + end.setting().turn() + " " + end.longSide();
	}

	private static BigDecimal rounded(Length length) {
		return length.toMillimetres().setScale(2, RoundingMode.HALF_UP);
	}
}
