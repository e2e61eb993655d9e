// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.session;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.core.runtime.ListenerList;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandStack;

import wainscribe.model.length.LengthUnit;
import wainscribe.profile.section.ProfileSection;
import wainscribe.profile.section.SectionCheck;
import wainscribe.profile.section.SectionFault;
import wainscribe.ui.profile.backdrop.Backdrop;

/**
 * A profile that is open: one draft, one undo history, what is wrong with it now, and the last sound section. To be used in
 * the user interface thread.
 */
public final class ProfileSession {

	private final LengthUnit units;
	private final BasicCommandStack history = new BasicCommandStack();
	private final SectionCheck check = new SectionCheck();
	private final ListenerList<ProfileListener> listeners = new ListenerList<>();
	private DeskState state;
	private ProfileSection trial;
	private List<SectionFault> faults;
	private ProfileSection sound;

	/**
	 * Opens a profile.
	 *
	 * @param draft    the profile
	 * @param backdrop what lies behind it, null for nothing
	 * @param units    in which lengths are shown and bare numbers are typed
	 */
	public ProfileSession(ProfileDraft draft, Backdrop backdrop, LengthUnit units) {
		this.units = Objects.requireNonNull(units);
		state = new DeskState(draft, backdrop);
		sound = draft.section();
		look();
	}

	/** Returns the profile without what is only tried. */
	public ProfileDraft draft() {
		return state.draft();
	}

	/** Returns what lies behind the section, if anything. */
	public Optional<Backdrop> backdrop() {
		return state.backdrop();
	}

	/** Returns the unit of the home. */
	public LengthUnit units() {
		return units;
	}

	/** Returns the one history of the profile. */
	public CommandStack history() {
		return history;
	}

	/** Tells whether there are edits that were not saved. */
	public boolean isDirty() {
		return history.isSaveNeeded();
	}

	/** Notes that the draft was written. */
	public void saved() {
		history.saveIsDone();
		tell();
	}

	/** Returns the section that is drawn now: the draft's, or the one that is tried during a drag. */
	public ProfileSection shown() {
		return trial == null ? draft().section() : trial;
	}

	/** Returns what is wrong with the section that is drawn now, the gravest first. */
	public List<SectionFault> faults() {
		return faults;
	}

	/** Returns the last section of which nothing was wrong; the first one if none was sound yet. */
	public ProfileSection sound() {
		return sound;
	}

	/** Shows a section without making it a step. */
	public void tryOut(ProfileSection other) {
		trial = Objects.requireNonNull(other);
		look();
		tell();
	}

	/** Goes back to the draft. */
	public void endTrial() {
		if (trial != null) {
			trial = null;
			look();
			tell();
		}
	}

	/** Makes the step that draws another section. */
	public Command drawing(String label, ProfileSection other) {
		return changing(label, draft().with(other));
	}

	/** Makes the step to another draft. */
	public Command changing(String label, ProfileDraft other) {
		return new DrawProfileCommand(label, this, new DeskState(other, state.picture()));
	}

	/** Makes the step to another backdrop, null for none. */
	public Command laying(String label, Backdrop other) {
		return new DrawProfileCommand(label, this, new DeskState(state.draft(), other));
	}

	/** Runs a step unless it changes nothing. */
	public void execute(Command command) {
		if (command.canExecute()) {
			history.execute(command);
		}
	}

	/** Starts to tell a listener; adding it twice changes nothing. */
	public void addListener(ProfileListener listener) {
		listeners.add(listener);
	}

	/** Stops to tell a listener. */
	public void removeListener(ProfileListener listener) {
		listeners.remove(listener);
	}

	DeskState state() {
		return state;
	}

	void put(DeskState other) {
		state = other;
		trial = null;
		look();
		tell();
	}

	private void look() {
		faults = List.copyOf(check.faults(shown()));
		if (faults.isEmpty()) {
			sound = shown();
		}
	}

	private void tell() {
		listeners.forEach(ProfileListener::profileChanged);
	}
}
