// SPDX-License-Identifier: EPL-2.0
/**
 * Moist air and what it does to a wall: dew point, condensation, the humidity of a room over a day of use. Degrees Celsius, Pascal, relative
 * humidity from 0 to 1.
 */
package wainscribe.finishes.air;
