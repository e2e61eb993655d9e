// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

/**
 * Something that can hurt someone.
 *
 * @param title what it is about
 * @param text  what to do about it
 */
public record Caution(String title, String text) {
}
