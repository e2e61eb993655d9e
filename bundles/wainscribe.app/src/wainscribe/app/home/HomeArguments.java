// SPDX-License-Identifier: EPL-2.0
package wainscribe.app.home;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads which homes the desktop was started with. */
public final class HomeArguments {

	private static final String HOME = "--home"; //$NON-NLS-1$

	private HomeArguments() {
	}

	/**
	 * Finds every {@code --home DIR} among the program arguments.
	 *
	 * @param arguments what the program was started with, others among them are left alone
	 * @return the folders in the order given, absolute; empty if none was named
	 */
	public static List<Path> read(List<String> arguments) {
		List<Path> homes = new ArrayList<>();
		for (int i = 0; i + 1 < arguments.size(); i++) {
			if (HOME.equals(arguments.get(i))) {
				homes.add(Path.of(arguments.get(i + 1)).toAbsolutePath().normalize());
				i++;
			}
		}
		return List.copyOf(homes);
	}
}
