// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import static wainscribe.model.ProfileUse.BASE;
import static wainscribe.model.ProfileUse.BATTEN;
import static wainscribe.model.ProfileUse.CASING;
import static wainscribe.model.ProfileUse.CROWN;
import static wainscribe.model.ProfileUse.FRAME;
import static wainscribe.model.ProfileUse.RAIL;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import org.eclipse.osgi.util.NLS;

import wainscribe.model.ProfileUse;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;

/**
 * The profiles that come with the suite: classical shapes in metric and inch sizes, contributed through the same extension
 * point as anyone else's.
 */
public final class BuiltInProfiles implements ProfileSource {

	/** Returns the catalogue of the built-in profiles alone, for tests and tools that run without a registry. */
	public static ProfileCatalogue catalogue() {
		return new ProfileCatalogue(new BuiltInProfiles().profiles());
	}

	@Override
	public List<TrimProfile> profiles() {
		List<TrimProfile> all = new ArrayList<>();
		addFrameMouldings(all);
		addRails(all);
		addBases(all);
		addCrowns(all);
		addCasings(all);
		return List.copyOf(all);
	}

	private static void addFrameMouldings(List<TrimProfile> all) {
		all.add(metric("bead-18", Messages.BuiltInProfiles_Bead, 18, 9, ClassicalShapes::bead, FRAME, BATTEN)); //$NON-NLS-1$
		all.add(metric("astragal-24", Messages.BuiltInProfiles_Astragal, 24, 13, ClassicalShapes::astragal, FRAME, BATTEN)); //$NON-NLS-1$
		all.add(metric("cove-25", Messages.BuiltInProfiles_Cove, 25, 12, ClassicalShapes::cove, FRAME)); //$NON-NLS-1$
		all.add(metric("ovolo-28", Messages.BuiltInProfiles_Ovolo, 28, 14, ClassicalShapes::ovolo, FRAME)); //$NON-NLS-1$
		all.add(metric("ogee-32", Messages.BuiltInProfiles_Ogee, 32, 13, ClassicalShapes::ogee, FRAME)); //$NON-NLS-1$
		all.add(metric("bead-and-cove-38", Messages.BuiltInProfiles_BeadAndCove, 38, 18, ClassicalShapes::beadAndCove, FRAME)); //$NON-NLS-1$
		all.add(metric("fillet-30", Messages.BuiltInProfiles_Fillet, 30, 9, ClassicalShapes::flat, FRAME, BATTEN)); //$NON-NLS-1$
		all.add(inch("bead-0.75in", Messages.BuiltInProfiles_Bead, "0.75", "0.375", ClassicalShapes::bead, FRAME, BATTEN)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		all.add(inch("cove-1in", Messages.BuiltInProfiles_Cove, "1", "0.5", ClassicalShapes::cove, FRAME)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		all.add(inch("ogee-1.25in", Messages.BuiltInProfiles_Ogee, "1.25", "0.5", ClassicalShapes::ogee, FRAME)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		all.add(inch("bead-and-cove-1.5in", Messages.BuiltInProfiles_BeadAndCove, "1.5", "0.6875", //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
				ClassicalShapes::beadAndCove, FRAME));
		all.add(inch("fillet-1.5in", Messages.BuiltInProfiles_Fillet, "1.5", "0.375", ClassicalShapes::flat, FRAME, BATTEN)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private static void addRails(List<TrimProfile> all) {
		all.add(metric("ogee-rail-64", Messages.BuiltInProfiles_OgeeRail, 64, 20, ClassicalShapes::ogeeRail, RAIL)); //$NON-NLS-1$
		all.add(metric("bead-rail-58", Messages.BuiltInProfiles_BeadRail, 58, 24, ClassicalShapes::beadRail, RAIL)); //$NON-NLS-1$
		all.add(metric("cap-44", Messages.BuiltInProfiles_Cap, 44, 30, ClassicalShapes::cap, RAIL)); //$NON-NLS-1$
		all.add(inch("ogee-rail-2.5in", Messages.BuiltInProfiles_OgeeRail, "2.5", "0.75", ClassicalShapes::ogeeRail, RAIL)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		all.add(inch("cap-1.75in", Messages.BuiltInProfiles_Cap, "1.75", "1.125", ClassicalShapes::cap, RAIL)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private static void addBases(List<TrimProfile> all) {
		all.add(metric("ogee-base-120", Messages.BuiltInProfiles_OgeeBase, 120, 15, ClassicalShapes::ogeeBase, BASE)); //$NON-NLS-1$
		all.add(metric("torus-base-145", Messages.BuiltInProfiles_TorusBase, 145, 18, ClassicalShapes::torusBase, BASE)); //$NON-NLS-1$
		all.add(inch("ogee-base-5.25in", Messages.BuiltInProfiles_OgeeBase, "5.25", "0.5625", ClassicalShapes::ogeeBase, BASE)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private static void addCrowns(List<TrimProfile> all) {
		all.add(metric("scotia-20", Messages.BuiltInProfiles_Scotia, 20, 20, ClassicalShapes::scotia, CROWN)); //$NON-NLS-1$
		all.add(metric("cove-crown-70", Messages.BuiltInProfiles_CoveCrown, 70, 70, ClassicalShapes::scotia, CROWN)); //$NON-NLS-1$
		all.add(metric("ogee-crown-80", Messages.BuiltInProfiles_OgeeCrown, 80, 62, ClassicalShapes::ogeeCrown, CROWN)); //$NON-NLS-1$
		all.add(inch("ogee-crown-3.5in", Messages.BuiltInProfiles_OgeeCrown, "3.5", "2.75", ClassicalShapes::ogeeCrown, CROWN)); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
	}

	private static void addCasings(List<TrimProfile> all) {
		all.add(metric("ogee-casing-70", Messages.BuiltInProfiles_OgeeCasing, 70, 20, ClassicalShapes::ogeeCasing, CASING)); //$NON-NLS-1$
		all.add(metric("bead-casing-64", Messages.BuiltInProfiles_BeadCasing, 64, 18, ClassicalShapes::beadCasing, CASING)); //$NON-NLS-1$
		all.add(inch("ogee-casing-2.5in", Messages.BuiltInProfiles_OgeeCasing, "2.5", "0.6875", ClassicalShapes::ogeeCasing, //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
				CASING));
	}

	private static TrimProfile metric(String id, String name, int face, int thickness, ProfileShape shape, ProfileUse... uses) {
		return profile(id, name, Length.ofMillimetres(face), Length.ofMillimetres(thickness), LengthUnit.MILLIMETRE, shape, uses);
	}

	private static TrimProfile inch(String id, String name, String face, String thickness, ProfileShape shape,
			ProfileUse... uses) {
		return profile(id, name, inches(face), inches(thickness), LengthUnit.INCH, shape, uses);
	}

	private static Length inches(String decimal) {
		return new Length(new BigDecimal(decimal).multiply(BigDecimal.valueOf(Length.UNITS_PER_INCH)).longValueExact());
	}

	private static TrimProfile profile(String id, String name, Length face, Length thickness, LengthUnit unit,
			ProfileShape shape, ProfileUse... uses) {
		String shown = NLS.bind(Messages.BuiltInProfiles_NameWithSize,
				new Object[] { name, LengthFormat.asShown(face, unit), LengthFormat.asShown(thickness, unit) });
		ProfileSection section = shape.section(face.approximateMillimetres(), thickness.approximateMillimetres());
		return new ShapedProfile(id, shown, Set.of(uses), face, thickness, section);
	}
}
