// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import wainscribe.profile.shape.BuiltInShapes;
import wainscribe.profile.shape.ProfileShape;
import wainscribe.profile.shape.ShapeRequest;

/**
 * The sizes that come with the suite: classical shapes in metric and inch sizes, contributed through the same extension
 * point as anyone else's.
 */
public final class BuiltInProfiles implements ProfileSource {

	/** Id of the profile and what it is: a shape of a size. */
	private static final String SIZES = """
			bead-18 = bead-18x9
			astragal-24 = astragal-24x13
			cove-25 = cove-25x12
			ovolo-28 = ovolo-28x14
			ogee-32 = ogee-32x13
			bead-and-cove-38 = bead-and-cove-38x18
			fillet-30 = fillet-30x9
			bead-0.75in = bead-0.75x0.375in
			cove-1in = cove-1x0.5in
			ogee-1.25in = ogee-1.25x0.5in
			bead-and-cove-1.5in = bead-and-cove-1.5x0.6875in
			fillet-1.5in = fillet-1.5x0.375in
			ogee-rail-64 = ogee-rail-64x20
			bead-rail-58 = bead-rail-58x24
			cap-44 = cap-44x30
			picture-rail-50 = picture-rail-50x20
			ogee-rail-2.5in = ogee-rail-2.5x0.75in
			cap-1.75in = cap-1.75x1.125in
			nosed-cap-22 = nosed-cap-22x36
			ogee-base-120 = ogee-base-120x15
			torus-base-145 = torus-base-145x18
			ogee-base-5.25in = ogee-base-5.25x0.5625in
			scotia-20 = scotia-20x20
			cove-crown-70 = cove-crown-70x70
			ogee-crown-80 = ogee-crown-80x62
			ogee-crown-3.5in = ogee-crown-3.5x2.75in
			ogee-casing-70 = ogee-casing-70x20
			bead-casing-64 = bead-casing-64x18
			ogee-casing-2.5in = ogee-casing-2.5x0.6875in
			lip-28 = lip-28x10
			"""; //$NON-NLS-1$

	/** Returns the catalogue of the built-in profiles and shapes alone, for tests and tools that run without a registry. */
	public static ProfileCatalogue catalogue() {
		return new ProfileCatalogue(new BuiltInProfiles().profiles(), new BuiltInShapes().shapes());
	}

	@Override
	public List<TrimProfile> profiles() {
		Map<String, ProfileShape> shapes = new LinkedHashMap<>();
		new BuiltInShapes().shapes().forEach(shape -> shapes.put(shape.id(), shape));
		return Arrays.stream(SIZES.split("\n")).map(line -> line.split(" = ")) //$NON-NLS-1$ //$NON-NLS-2$
				.map(entry -> sized(entry[0], ShapeRequest.parse(entry[1]).orElseThrow(), shapes)).toList();
	}

	private static TrimProfile sized(String id, ShapeRequest request, Map<String, ProfileShape> shapes) {
		TrimProfile drawn = request.draw(shapes.get(request.shape())).profile().orElseThrow();
		return new TrimProfile(id, drawn.name(), drawn.uses(), drawn.section());
	}
}
