// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * The classical shapes that come with the suite, contributed through the same extension point as anyone else's.
 * <p>
 * Each is constructed from lines and arcs as handbooks of architecture describe it in words: what bends out or in, where it
 * climbs or falls, which ends run parallel or square to the wall. Proportions are our own. A fillet is a narrow flat, a quirk
 * a small step.
 */
public final class BuiltInShapes implements ShapeSource {

	@Override
	public List<ProfileShape> shapes() {
		List<ProfileShape> all = new ArrayList<>(FrameMouldings.all());
		all.addAll(FlatMouldings.all());
		all.addAll(RailMouldings.all());
		all.addAll(BaseMouldings.all());
		all.addAll(CrownMouldings.all());
		all.addAll(CasingMouldings.all());
		return List.copyOf(all);
	}
}
