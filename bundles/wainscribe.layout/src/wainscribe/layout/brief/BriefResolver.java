// SPDX-License-Identifier: EPL-2.0
package wainscribe.layout.brief;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import wainscribe.layout.EffectiveBrief;
import wainscribe.layout.MouldingSection;
import wainscribe.model.Brief;
import wainscribe.model.Home;
import wainscribe.model.Material;
import wainscribe.model.ProfileReference;
import wainscribe.model.ProfileUse;
import wainscribe.model.Room;
import wainscribe.model.Wall;
import wainscribe.model.length.Length;
import wainscribe.model.length.LengthUnit;
import wainscribe.profile.ProfileCatalogue;
import wainscribe.profile.TrimProfile;

/**
 * Finds the decisions that hold for a room: the room's own brief wins over the home's, the home's over
 * {@link PracticeDefaults}.
 * <p>
 * Face and thickness of a moulding are looked for in this order: stated in the room's brief; of the profile that the room's
 * brief names; stated in the home's brief; of the profile that the home's brief names; default. So a brief that states a
 * measure means that measure, and a profile fills in what is not stated beside it. The section carries the profile's id only
 * while both measures are the profile's own. A profile id that the catalogue does not know gives no measures but stays
 * among {@link EffectiveBrief#profiles()}.
 */
public final class BriefResolver {

	private final ProfileCatalogue profiles;

	/**
	 * Creates a resolver.
	 *
	 * @param profiles the profiles that briefs refer to
	 */
	public BriefResolver(ProfileCatalogue profiles) {
		this.profiles = Objects.requireNonNull(profiles);
	}

	/**
	 * Resolves the brief of a room.
	 *
	 * @param home the home; its unit may be null, then millimetres hold
	 * @param room one of its rooms
	 * @return all decisions, none of them missing but those that may stay open
	 */
	public EffectiveBrief resolve(Home home, Room room) {
		LengthUnit units = home.getUnits() == null ? LengthUnit.MILLIMETRE : home.getUnits();
		List<Brief> briefs = Stream.of(room.getBrief(), home.getBrief()).filter(Objects::nonNull).toList();
		PracticeDefaults practice = new PracticeDefaults(units);
		MouldingSection rail = section(briefs, ProfileUse.RAIL, Brief::getRailFace, Brief::getRailThickness,
				new MouldingSection("", practice.railFace(), practice.railThickness())); //$NON-NLS-1$
		MouldingSection frame = section(briefs, ProfileUse.FRAME, Brief::getFace, Brief::getThickness,
				new MouldingSection("", practice.frameFace(), practice.frameThickness())); //$NON-NLS-1$
		return new EffectiveBrief(units, first(briefs, Brief::getPattern).orElse(PracticeDefaults.PATTERN),
				first(briefs, Brief::getRail).orElseGet(() -> practice.railTop(height(room))), rail,
				first(briefs, Brief::getGap).orElse(null), first(briefs, Brief::getGapY).orElse(null), frame,
				width(briefs, Brief::getFrameWidthMin), width(briefs, Brief::getFrameWidthMax),
				measure(briefs, ProfileUse.BASE, Brief::getBase, TrimProfile::face).orElse(practice.base()),
				measure(briefs, ProfileUse.CROWN, Brief::getCrown, TrimProfile::face).orElse(Length.ZERO),
				first(briefs, brief -> recorded(brief.getMaterial())).orElse(PracticeDefaults.MATERIAL),
				first(briefs, brief -> ifAny(brief.getStock())).orElse(List.of()),
				first(briefs, Brief::getNail).orElse(null), first(briefs, Brief::getBoard).orElse(Length.ZERO),
				new LinkedHashSet<>(first(briefs, brief -> ifAny(brief.getBoardWalls())).orElse(List.of())), chosen(briefs));
	}

	/**
	 * Returns the decisions for a pattern of strips: where no brief says anything about the moulding, and none was chosen for a
	 * trial, a plain strip takes the place of the usual frame moulding.
	 *
	 * @param brief the decisions of a room, maybe changed for a trial
	 * @param home  the home
	 * @param room  the room
	 */
	public EffectiveBrief withStrips(EffectiveBrief brief, Home home, Room room) {
		PracticeDefaults practice = new PracticeDefaults(brief.units());
		MouldingSection usual = new MouldingSection("", practice.frameFace(), practice.frameThickness()); //$NON-NLS-1$
		List<Brief> briefs = Stream.of(room.getBrief(), home.getBrief()).filter(Objects::nonNull).toList();
		boolean decided = measure(briefs, ProfileUse.FRAME, Brief::getFace, TrimProfile::face).isPresent()
				|| measure(briefs, ProfileUse.FRAME, Brief::getThickness, TrimProfile::thickness).isPresent();
		return decided || !brief.frame().equals(usual) ? brief
				: brief.withFrame(new MouldingSection("", practice.stripFace(), practice.stripThickness())); //$NON-NLS-1$
	}

	/** Returns the greatest measured height of a room, null where none was measured. */
	private static Length height(Room room) {
		return room.getHeight() != null ? room.getHeight()
				: room.getWalls().stream().map(Wall::getHeight).filter(Objects::nonNull).max(Length::compareTo).orElse(null);
	}

	private static <T> Optional<T> first(List<Brief> briefs, Function<Brief, T> decision) {
		return briefs.stream().map(decision).filter(Objects::nonNull).findFirst();
	}

	/** The two ends of a wished width belong together: a brief that states one of them hides both of the home's. */
	private static Length width(List<Brief> briefs, Function<Brief, Length> end) {
		return briefs.stream().filter(brief -> brief.getFrameWidthMin() != null || brief.getFrameWidthMax() != null)
				.findFirst().map(end).orElse(null);
	}

	private MouldingSection section(List<Brief> briefs, ProfileUse use, Function<Brief, Length> face,
			Function<Brief, Length> thickness, MouldingSection otherwise) {
		Length faceWidth = measure(briefs, use, face, TrimProfile::face).orElse(otherwise.face());
		Length projection = measure(briefs, use, thickness, TrimProfile::thickness).orElse(otherwise.thickness());
		String id = briefs.stream().flatMap(brief -> profile(brief, use).stream()).findFirst()
				.filter(profile -> profile.face().equals(faceWidth) && profile.thickness().equals(projection))
				.map(TrimProfile::id).orElse(""); //$NON-NLS-1$
		return new MouldingSection(id, faceWidth, projection);
	}

	private Optional<Length> measure(List<Brief> briefs, ProfileUse use, Function<Brief, Length> stated,
			Function<TrimProfile, Length> ofProfile) {
		return briefs.stream().flatMap(brief -> Optional.ofNullable(stated.apply(brief))
				.or(() -> profile(brief, use).map(ofProfile)).stream()).findFirst();
	}

	private Optional<TrimProfile> profile(Brief brief, ProfileUse use) {
		return brief.getProfiles().stream().filter(reference -> reference.getUse() == use && reference.getProfile() != null)
				.map(ProfileReference::getProfile).flatMap(id -> profiles.find(id).stream()).findFirst();
	}

	private static Map<ProfileUse, String> chosen(List<Brief> briefs) {
		Map<ProfileUse, String> map = new EnumMap<>(ProfileUse.class);
		for (Brief brief : briefs) {
			for (ProfileReference reference : brief.getProfiles()) {
				if (reference.getUse() != null && reference.getProfile() != null) {
					map.putIfAbsent(reference.getUse(), reference.getProfile());
				}
			}
		}
		return map;
	}

	private static Material recorded(Material material) {
		return material == Material.UNRECORDED ? null : material;
	}

	private static <T> List<T> ifAny(List<T> list) {
		return list.isEmpty() ? null : list;
	}
}
