// SPDX-License-Identifier: EPL-2.0
/** Which coats suit a room: its moisture over a day of use against what a coat bears, and when it may be painted. */
package wainscribe.finishes.suitability;
