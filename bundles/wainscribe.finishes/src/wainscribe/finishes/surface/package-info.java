// SPDX-License-Identifier: EPL-2.0
/** The old surface under a new paint, and what is done to it first. */
package wainscribe.finishes.surface;
