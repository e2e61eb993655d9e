// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** Finds real widgets by what a person reads beside them, and uses them as a person would. */
final class Widgets {

	private static final Duration PATIENCE = Duration.ofSeconds(30);

	private Widgets() {
	}

	/** Lets the workbench go on until something holds. */
	static void waitUntil(String what, BooleanSupplier holds) {
		long end = System.nanoTime() + PATIENCE.toNanos();
		Display display = Display.getCurrent();
		while (!holds.getAsBoolean()) {
			if (System.nanoTime() > end) {
				fail("waited in vain: " + what);
			}
			if (!display.readAndDispatch()) {
				display.timerExec(20, () -> { });
				display.sleep();
			}
		}
	}

	/** Lets the workbench do what is waiting. */
	static void settle() {
		while (Display.getCurrent().readAndDispatch()) {
			// until nothing is waiting
		}
	}

	/** Returns all controls below one, itself included. */
	static Stream<Control> all(Control root) {
		Stream<Control> below = root instanceof Composite composite ? Stream.of(composite.getChildren()).flatMap(Widgets::all) : Stream.empty();
		return Stream.concat(Stream.of(root), below);
	}

	/** Finds the only control of a kind that fits. */
	static <T extends Control> T find(Control root, Class<T> kind, Predicate<? super T> fits) {
		List<T> found = all(root).filter(kind::isInstance).map(kind::cast).filter(fits).toList();
		assertTrue(found.size() == 1, found.size() + " found of " + kind.getSimpleName());
		return found.get(0);
	}

	/** Finds the control that follows a label with this text. */
	static <T extends Control> T labelled(Control root, String label, Class<T> kind) {
		List<Control> controls = new ArrayList<>(all(root).toList());
		for (int i = 0; i < controls.size(); i++) {
			if (controls.get(i) instanceof Label found && plain(found.getText()).equals(label)) {
				return controls.subList(i + 1, controls.size()).stream().filter(kind::isInstance).map(kind::cast).findFirst().orElseThrow();
			}
		}
		return fail("no label " + label);
	}

	/** Finds a button by its text. */
	static Button button(Control root, String text) {
		return find(root, Button.class, button -> plain(button.getText()).equals(text));
	}

	/** Presses a button. */
	static void press(Button button) {
		assertTrue(button.isEnabled(), button.getText() + " can be pressed");
		if ((button.getStyle() & (SWT.CHECK | SWT.RADIO)) != 0) {
			button.setSelection(!button.getSelection());
		}
		button.notifyListeners(SWT.Selection, new Event());
		settle();
	}

	/** Types into a field in place of what is there. */
	static void type(Text field, String text) {
		field.setText(text);
		settle();
	}

	/** Presses Enter in a field. */
	static void enter(Text field) {
		field.notifyListeners(SWT.DefaultSelection, new Event());
		settle();
	}

	/** Returns all rows of a tree. */
	static List<TreeItem> rows(Tree tree) {
		List<TreeItem> rows = new ArrayList<>();
		for (TreeItem item : tree.getItems()) {
			collect(item, rows);
		}
		return rows;
	}

	private static void collect(TreeItem item, List<TreeItem> rows) {
		rows.add(item);
		for (TreeItem child : item.getItems()) {
			collect(child, rows);
		}
	}

	private static String plain(String text) {
		return text.replace("&", "");
	}
}
