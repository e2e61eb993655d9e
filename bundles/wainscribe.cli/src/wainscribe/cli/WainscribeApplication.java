// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.Version;

import wainscribe.report.DesignServices;

/**
 * Runs one command without a display and hands its exit code to the shell: 0 done, 1 error-level findings or an
 * infeasible request, 2 bad usage or input.
 */
public final class WainscribeApplication implements IApplication {

	@Override
	public Object start(IApplicationContext context) {
		String[] words = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
		Version version = FrameworkUtil.getBundle(WainscribeApplication.class).getVersion();
		// Names are free text of any script: what the locale of the shell can't write must not become question marks.
		Console console = new Console(utf8(FileDescriptor.out), utf8(FileDescriptor.err));
		CommandRun run = new CommandRun(DesignServices.from(Platform.getExtensionRegistry()),
				version.getMajor() + "." + version.getMinor() + '.' + version.getMicro(), console, //$NON-NLS-1$
				failure -> ILog.of(WainscribeApplication.class).error(failure.toString(), failure));
		int code = run.run(words);
		console.out().flush();
		console.err().flush();
		return code;
	}

	@Override
	public void stop() {
		// a command ends by itself
	}

	private static PrintWriter utf8(FileDescriptor descriptor) {
		return new PrintWriter(new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8));
	}
}
