// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.session;

import java.util.function.Consumer;

import org.eclipse.core.runtime.ListenerList;
import org.eclipse.core.runtime.SafeRunner;

/** Tells listeners one after the other; one that fails is logged and does not keep the news from the rest. */
final class ListenerSet<T> {

	private final ListenerList<T> listeners = new ListenerList<>(ListenerList.IDENTITY);

	void add(T listener) {
		listeners.add(listener);
	}

	void remove(T listener) {
		listeners.remove(listener);
	}

	void tell(Consumer<T> news) {
		for (T listener : listeners) {
			SafeRunner.run(() -> news.accept(listener));
		}
	}
}
