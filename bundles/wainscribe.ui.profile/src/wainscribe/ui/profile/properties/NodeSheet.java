// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.profile.properties;

import java.util.Optional;

import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.ui.views.properties.IPropertySource;

import wainscribe.ui.profile.desk.NodeKey;
import wainscribe.ui.profile.desk.SectionNodes;
import wainscribe.ui.profile.session.ProfileSession;
import wainscribe.ui.profile.words.NodeWords;
import wainscribe.ui.properties.SheetSubject;

/**
 * A point, a segment or a handle in the property sheet; one that is gone gives way to its profile.
 *
 * @param session the profile
 * @param key     which of its nodes
 */
public record NodeSheet(ProfileSession session, NodeKey key) implements SheetSubject {

	private SectionNodes nodes() {
		return new SectionNodes(session.draft().section());
	}

	@Override
	public String title() {
		return NodeWords.name(nodes(), key);
	}

	@Override
	public String subtitle() {
		return session.draft().data().name();
	}

	@Override
	public CommandStack history() {
		return session.history();
	}

	@Override
	public IPropertySource properties() {
		return new NodePropertySource(session, key);
	}

	@Override
	public Optional<SheetSubject> current() {
		return Optional.of(nodes().placeOf(key).isPresent() ? this : new ProfileSheet(session));
	}
}
