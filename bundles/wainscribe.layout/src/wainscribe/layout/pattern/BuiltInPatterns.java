// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.pattern;

import java.util.List;
import java.util.function.Supplier;

/**
 * The patterns that come with this bundle, without the platform's registry: for headless use and tests. In the running
 * application they arrive through the extension point like anyone else's, see {@link PatternReader}.
 */
public final class BuiltInPatterns {

	private BuiltInPatterns() {
	}

	/** Returns a catalogue of the built-in patterns in the order in which they are contributed. */
	public static PatternCatalogue catalogue() {
		return new PatternCatalogue(List.of(
				new BuiltIn("frames-under-rail", Messages.FramesUnderRail_Name, Messages.FramesUnderRail_Description, FramesUnderRail::new), //$NON-NLS-1$
				new BuiltIn("frames-two-tier", Messages.FramesTwoTier_Name, Messages.FramesTwoTier_Description, FramesTwoTier::new), //$NON-NLS-1$
				new BuiltIn("frames-to-ceiling", Messages.FramesToCeiling_Name, Messages.FramesToCeiling_Description, FramesToCeiling::new), //$NON-NLS-1$
				new BuiltIn("wide-centre", Messages.WideCentre_Name, Messages.WideCentre_Description, WideCentre::new), //$NON-NLS-1$
				new BuiltIn("battens-under-rail", Messages.BattensUnderRail_Name, Messages.BattensUnderRail_Description, BattensUnderRail::new), //$NON-NLS-1$
				new BuiltIn("boards-and-rails", Messages.BoardsAndRails_Name, Messages.BoardsAndRails_Description, BoardsAndRails::new), //$NON-NLS-1$
				new BuiltIn("rail-and-base", Messages.RailAndBase_Name, Messages.RailAndBase_Description, RailAndBase::new), //$NON-NLS-1$
				new BuiltIn("none", Messages.NoTreatment_Name, Messages.NoTreatment_Description, NoTreatment::new))); //$NON-NLS-1$
	}

	private record BuiltIn(String id, String name, String description, Supplier<WallPattern> source)
			implements PatternDescriptor {

		@Override
		public WallPattern pattern() {
			return source.get();
		}
	}
}
