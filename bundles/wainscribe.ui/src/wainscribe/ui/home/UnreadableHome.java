// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.home;

import org.eclipse.core.resources.IProject;

/**
 * A home whose files cannot be read.
 *
 * @param project where it lies
 * @param reason  one line: which file, where, what was expected
 */
record UnreadableHome(IProject project, String reason) {
}
