// SPDX-License-Identifier: EPL-2.0
package wainscribe.drawing;

/** Something to paint. Shapes of a layer are painted in their order. */
public sealed interface Shape permits Path, Label, Dimension {

	/** Returns what the shape stands for; never null. */
	Subject subject();

	/** Returns what decides its look; never null. */
	Role role();

	/** Returns the rectangle it fills, without the width of its lines. */
	Bounds bounds();
}
