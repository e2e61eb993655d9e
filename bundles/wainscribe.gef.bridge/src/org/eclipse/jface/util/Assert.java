// SPDX-License-Identifier: EPL-2.0
package org.eclipse.jface.util;

/**
 * Stands in for the class of this name that today's JFace no longer has, but GEF 3.2 still calls.
 *
 * <p>Every check is handed on to {@link org.eclipse.core.runtime.Assert}. Only GEF uses it; our own code asks
 * {@code Objects.requireNonNull}.
 */
public final class Assert {

	private Assert() {
	}

	/**
	 * Refuses null.
	 *
	 * @param object what must not be null
	 */
	public static void isNotNull(Object object) {
		org.eclipse.core.runtime.Assert.isNotNull(object);
	}

	/**
	 * Refuses null.
	 *
	 * @param object  what must not be null
	 * @param message said when it is
	 */
	public static void isNotNull(Object object, String message) {
		org.eclipse.core.runtime.Assert.isNotNull(object, message);
	}

	/**
	 * Demands that a condition holds.
	 *
	 * @param condition what must be true
	 * @return true
	 */
	public static boolean isTrue(boolean condition) {
		return org.eclipse.core.runtime.Assert.isTrue(condition);
	}

	/**
	 * Demands that a condition holds.
	 *
	 * @param condition what must be true
	 * @param message   said when it is not
	 * @return true
	 */
	public static boolean isTrue(boolean condition, String message) {
		return org.eclipse.core.runtime.Assert.isTrue(condition, message);
	}
}
