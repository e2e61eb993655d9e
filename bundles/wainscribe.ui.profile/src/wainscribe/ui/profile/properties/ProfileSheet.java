// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.properties;

import java.util.Optional;

import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.ui.views.properties.IPropertySource;

import wainscribe.ui.profile.Messages;
import wainscribe.ui.profile.session.ProfileSession;
import wainscribe.ui.properties.SheetSubject;

/**
 * A whole profile in the property sheet.
 *
 * @param session the profile
 */
public record ProfileSheet(ProfileSession session) implements SheetSubject {

	@Override
	public String title() {
		return session.draft().data().name();
	}

	@Override
	public String subtitle() {
		return Messages.ProfileSheet_Subtitle;
	}

	@Override
	public CommandStack history() {
		return session.history();
	}

	@Override
	public IPropertySource properties() {
		return new ProfilePropertySource(session);
	}

	@Override
	public Optional<SheetSubject> current() {
		return Optional.of(this);
	}
}
