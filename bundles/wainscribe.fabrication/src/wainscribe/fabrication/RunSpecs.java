// SPDX-License-Identifier: EPL-2.0
package wainscribe.fabrication;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;

import wainscribe.layout.EffectiveBrief;
import wainscribe.layout.MouldingSection;
import wainscribe.layout.RailBand;
import wainscribe.layout.RoomDesign;
import wainscribe.model.ProfileUse;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthFormat;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.profile.TrimProfile;

/** Says which mouldings run round a room, and what is assumed of those whose profile was not chosen. */
record RunSpecs(ProfileCatalogue profiles) {

	/** Returns rail, base and crown, as far as the design has them. */
	List<RunSpec> of(RoomDesign design) {
		List<RunSpec> specs = new ArrayList<>();
		design.layout().rail().ifPresent(rail -> specs.add(rail(design, rail)));
		base(design).ifPresent(specs::add);
		crown(design).ifPresent(specs::add);
		return specs;
	}

	private RunSpec rail(RoomDesign design, RailBand rail) {
		MouldingSection wished = design.brief().rail();
		MouldingSection section = new MouldingSection(wished.id(), rail.top().minus(rail.bottom()), rail.thickness());
		return new RunSpec(PieceKind.RAIL, section, design.layout().material(), coped(design, section), rail.bottom(), rail.top(), List.of());
	}

	/** A section that runs back under itself cannot be coped; one that was not chosen is taken to. */
	private boolean coped(RoomDesign design, MouldingSection section) {
		return CornerJoints.isCoped(design.layout().material())
				&& profiles.find(section.id()).map(profile -> profile.section().canBeCoped()).orElse(true);
	}

	private Optional<RunSpec> base(RoomDesign design) {
		EffectiveBrief brief = design.brief();
		if (brief.base() == null || brief.base().signum() <= 0) {
			return Optional.empty();
		}
		Length usual = brief.units() == LengthUnit.INCH ? Length.ofInches(9, 16) : Length.ofMillimetres(15);
		List<String> notes = new ArrayList<>();
		MouldingSection section = section(brief, ProfileUse.BASE, brief.base()).orElseGet(() -> {
			notes.add(NLS.bind(Messages.RunPieces_ThicknessAssumed, LengthFormat.asShown(usual, brief.units())));
			return new MouldingSection("", brief.base(), usual); //$NON-NLS-1$
		});
		return Optional.of(new RunSpec(PieceKind.BASE, section, design.layout().material(), coped(design, section), Length.ZERO, section.face(),
				notes));
	}

	private Optional<RunSpec> crown(RoomDesign design) {
		EffectiveBrief brief = design.brief();
		if (brief.crown() == null || brief.crown().signum() <= 0) {
			return Optional.empty();
		}
		List<String> notes = new ArrayList<>();
		MouldingSection section = section(brief, ProfileUse.CROWN, brief.crown()).orElseGet(() -> {
			notes.add(Messages.RunPieces_CrownSpring);
			return new MouldingSection("", brief.crown(), brief.crown()); //$NON-NLS-1$
		});
		return Optional.of(new RunSpec(PieceKind.CROWN, section, design.layout().material(), coped(design, section), section.face(), Length.ZERO,
				notes));
	}

	/** The chosen profile lends its thickness; its id counts only while the brief keeps its face. */
	private Optional<MouldingSection> section(EffectiveBrief brief, ProfileUse use, Length face) {
		Optional<TrimProfile> chosen = Optional.ofNullable(brief.profiles().get(use)).flatMap(profiles::find);
		return chosen.map(profile -> new MouldingSection(profile.face().equals(face) ? profile.id() : "", face, //$NON-NLS-1$
				profile.thickness()));
	}
}
