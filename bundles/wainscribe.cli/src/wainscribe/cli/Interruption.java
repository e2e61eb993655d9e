// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Turns Ctrl-C into a wish to come to an end: the work that asks {@link #isWished()} ends with what it has, the result is
 * written, and the process ends with the command's own exit code.
 */
final class Interruption implements AutoCloseable {

	/** A command that has not written its result by then is cut off. */
	private static final long LONGEST_WAIT_SECONDS = 20;

	private final CountDownLatch done = new CountDownLatch(1);
	private final Thread hook = new Thread(this::comeToAnEnd, "wainscribe interruption"); //$NON-NLS-1$
	private volatile boolean wished;
	private volatile int code = ExitCode.DONE;

	/** Listens from now on until it is closed. */
	static Interruption listen() {
		Interruption interruption = new Interruption();
		Runtime.getRuntime().addShutdownHook(interruption.hook);
		return interruption;
	}

	/** Tells whether the user wants the work to end. */
	boolean isWished() {
		return wished;
	}

	/** Notes with what exit code the process is to end. */
	void endWith(int exitCode) {
		code = exitCode;
	}

	private void comeToAnEnd() {
		wished = true;
		try {
			if (done.await(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS)) {
				Runtime.getRuntime().halt(code);
			}
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
		}
	}

	@Override
	public void close() {
		if (!wished) {
			try {
				Runtime.getRuntime().removeShutdownHook(hook);
			} catch (IllegalStateException e) {
				// the process is ending this very moment; the hook waits for the result
				wished = true;
			}
		}
		done.countDown();
	}
}
