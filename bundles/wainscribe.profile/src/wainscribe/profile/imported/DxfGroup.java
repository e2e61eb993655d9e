// SPDX-License-Identifier: EPL-2.0
package wainscribe.profile.imported;

/** One pair of lines: where it stands, what the value means, and the value. */
record DxfGroup(int row, int code, String value) {
}
