// SPDX-License-Identifier: EPL-2.0
/** Lists of colours that the user brings: as CSV, or as colour-exchange XML (ISO 17972). */
package wainscribe.finishes.colour.list;
