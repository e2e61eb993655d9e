// SPDX-License-Identifier: EPL-2.0
/** How well a coat hides what is under it: two-flux theory of Kubelka and Munk. */
package wainscribe.finishes.hiding;
