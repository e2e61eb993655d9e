// SPDX-License-Identifier: EPL-2.0
package wainscribe.cli;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.Version;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/**
 * Runs one command without a display and hands its exit code to the shell: 0 done, 1 error-level findings or an
 * infeasible request, 2 bad usage or input.
 */
public final class WainscribeApplication implements IApplication {

	@Override
	public Object start(IApplicationContext context) {
		String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
		return new CommandLine(new Wainscribe()).execute(arguments);
	}

	@Override
	public void stop() {
		// a command ends by itself
	}

	/** The command of which all others are a part. */
	@Command(name = "wainscribe", mixinStandardHelpOptions = true, versionProvider = BundleVersion.class,
		description = "Redesigns finished rooms without rebuilding them.")
	static final class Wainscribe {
	}

	/** Says the version of the bundle that runs. */
	static final class BundleVersion implements CommandLine.IVersionProvider {
		@Override
		public String[] getVersion() {
			Version version = FrameworkUtil.getBundle(BundleVersion.class).getVersion();
			return new String[] { "wainscribe " + version.getMajor() + '.' + version.getMinor() + '.' + version.getMicro() };
		}
	}
}
