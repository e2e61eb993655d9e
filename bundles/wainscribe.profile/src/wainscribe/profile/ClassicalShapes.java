// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

/** The shapes behind {@link BuiltInProfiles}: f is the face width, t the thickness, both in millimetres. */
final class ClassicalShapes {

	private ClassicalShapes() {
	}

	/** A plain strip. */
	static ProfileSection flat(double f, double t) {
		return new SectionPath(0, 0).line(0, t).line(f, 0).line(0, -t).section();
	}

	/** A half round on low edges; with the thickness half the face there are none. */
	static ProfileSection bead(double f, double t) {
		return new SectionPath(0, 0).line(0, t - f / 2).halfRound(f).line(0, f / 2 - t).section();
	}

	/** A half round between two fillets, each a sixth of the face. */
	static ProfileSection astragal(double f, double t) {
		double fillet = f / 6;
		double edge = t - f / 3;
		return new SectionPath(0, 0).line(0, edge).line(fillet, 0).halfRound(f - 2 * fillet).line(fillet, 0).line(0, -edge)
				.section();
	}

	/** A quarter round that falls from the high edge to the low one, between two fillets. */
	static ProfileSection ovolo(double f, double t) {
		double low = t / 4;
		double drop = t - low;
		double fillet = (f - drop) / 2;
		return new SectionPath(0, 0).line(0, t).line(fillet, 0).leaving(drop, -drop).line(fillet, 0).line(0, -low).section();
	}

	/** A quarter hollow that falls from the high edge to the low one, between two fillets. */
	static ProfileSection cove(double f, double t) {
		double low = t / 4;
		double drop = t - low;
		double fillet = (f - drop) / 2;
		return new SectionPath(0, 0).line(0, t).line(fillet, 0).arriving(drop, -drop).line(fillet, 0).line(0, -low).section();
	}

	/** An ogee that falls from the high edge to the low one, between two fillets of an eighth of the face. */
	static ProfileSection ogee(double f, double t) {
		double low = t / 4;
		double fillet = f / 8;
		return new SectionPath(0, 0).line(0, t).line(fillet, 0).ogee(f - 2 * fillet, low - t).line(fillet, 0).line(0, -low)
				.section();
	}

	/** A bead on the high edge, a quirk, a hollow and a fillet. */
	static ProfileSection beadAndCove(double f, double t) {
		double bead = f / 3;
		double shoulder = t - bead / 2;
		double quirk = t / 10;
		double low = t / 5;
		double fillet = f / 6;
		return new SectionPath(0, 0).line(0, shoulder).halfRound(bead).line(0, -quirk)
				.arriving(f - bead - fillet, low + quirk - shoulder).line(fillet, 0).line(0, -low).section();
	}

	/** A rail alike above and below: ogee, quirk, flat nose, quirk, ogee. */
	static ProfileSection ogeeRail(double f, double t) {
		double low = t / 4;
		double quirk = t / 8;
		double side = f * 0.3;
		double climb = t - low - quirk;
		return new SectionPath(0, 0).line(0, low).ogee(side, climb).line(0, quirk).line(f - 2 * side, 0).line(0, -quirk)
				.ogee(side, -climb).line(0, -low).section();
	}

	/** A rail alike above and below: hollow, quirk, half-round nose, quirk, hollow. */
	static ProfileSection beadRail(double f, double t) {
		double bead = f * 0.4;
		double low = t / 5;
		double quirk = t / 12;
		double side = (f - bead) / 2;
		double climb = t - bead / 2 - low - quirk;
		return new SectionPath(0, 0).line(0, low).leaving(side, climb).line(0, quirk).halfRound(bead).line(0, -quirk)
				.arriving(side, -climb).line(0, -low).section();
	}

	/** A cap: ogee below, quirk, and a nose rounded at both edges with a level top. */
	static ProfileSection cap(double f, double t) {
		double low = t / 6;
		double round = t / 5;
		double side = f / 2;
		double climb = t / 2;
		return new SectionPath(0, 0).line(0, low).ogee(side, climb).line(0, t - low - climb - round).arriving(round, round)
				.line(f - side - 2 * round, 0).leaving(round, -round).line(0, round - t).section();
	}

	/** A base board with an ogee and a fillet at the top. */
	static ProfileSection ogeeBase(double f, double t) {
		double low = t * 0.4;
		double curve = t * 1.2;
		double fillet = t / 4;
		return new SectionPath(0, t).line(f - curve - fillet, 0).ogee(curve, low - t).line(fillet, 0).line(0, -low)
				.section(0, 0);
	}

	/** A base board with a quarter round of half its thickness at the top. */
	static ProfileSection torusBase(double f, double t) {
		double round = t / 2;
		return new SectionPath(0, t).line(f - round, 0).leaving(round, -round).line(0, round - t).section(0, 0);
	}

	/** A solid hollow in the angle of wall and ceiling; face and thickness alike. */
	static ProfileSection scotia(double f, double t) {
		double edge = t / 8;
		return new SectionPath(0, 0).line(0, edge).leaving(f - edge, t - edge).line(edge, 0).section(f, 0);
	}

	/** A sprung crown: fillet, ogee, fillet; hollow behind. */
	static ProfileSection ogeeCrown(double f, double t) {
		double edge = t / 8;
		double fillet = f / 12;
		return new SectionPath(0, 0).line(0, edge).line(fillet, 0).ogee(f - 2 * fillet, t - edge).line(fillet, 0)
				.section(f, t * 0.75, f * 0.25, 0);
	}

	/** A casing: thick outer edge, ogee, flat field and a rounded inner edge. */
	static ProfileSection ogeeCasing(double f, double t) {
		double low = t * 0.6;
		double round = t / 5;
		double fillet = f / 10;
		double curve = f / 4;
		return new SectionPath(0, 0).line(0, t).line(fillet, 0).ogee(curve, low - t)
				.line(f - fillet - curve - round, 0).leaving(round, -round).line(0, round - low).section();
	}

	/** A flat casing with a bead at the inner edge behind a quirk. */
	static ProfileSection beadCasing(double f, double t) {
		double bead = t * 0.6;
		double quirk = t / 8;
		double low = t - bead / 2;
		return new SectionPath(0, 0).line(0, t).line(f - bead - quirk, 0).line(0, low - t).line(quirk, 0).halfRound(bead)
				.line(0, -low).section();
	}
}
