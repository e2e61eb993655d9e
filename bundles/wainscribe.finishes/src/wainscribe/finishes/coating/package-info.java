// SPDX-License-Identifier: EPL-2.0
/** Coating systems: what paints can do, in measured classes and without makers. */
package wainscribe.finishes.coating;
