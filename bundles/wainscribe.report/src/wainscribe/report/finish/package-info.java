// SPDX-License-Identifier: EPL-2.0
/** The finish schedule: which coat goes where, over what preparation, and why one does not suit. */
package wainscribe.report.finish;
