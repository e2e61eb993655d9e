// SPDX-License-Identifier: EPL-2.0
package wainscribe.report.view;

/**
 * A named value.
 *
 * @param name  what it is
 * @param value how much or which
 */
public record Fact(String name, String value) {
}
