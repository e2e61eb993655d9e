// SPDX-License-Identifier: EPL-2.0
package wainscribe.model.storage;

/**
 * Lifts the text of an older file by one format version, before it is read into the model.
 * <p>
 * A migration knows nothing of the model of today, so it stays right when the model moves on.
 */
public interface FormatMigration {

	/** Returns the version that it reads; it writes the next one. */
	int fromVersion();

	/**
	 * Rewrites a file.
	 *
	 * @param xml the whole text of a {@code .home} or {@code .room} file of version {@link #fromVersion()}
	 * @return the same content as a file of the next version, its {@code formatVersion} raised
	 */
	String migrate(String xml);
}
