// SPDX-License-Identifier: EPL-2.0
package wainscribe.ui.tests;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.bindings.Binding;
import org.eclipse.jface.bindings.keys.KeySequence;
import org.eclipse.jface.bindings.keys.ParseException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.keys.IBindingService;
import org.junit.jupiter.api.Test;

/** The desktop opens as a drawing table, with nothing left over of the programmer's workbench it is built on. */
class WorkbenchTest {

	private static final List<String> MENUS = List.of("File", "Edit", "View", "Help");
	private static final List<String> FOREIGN = List.of("Run", "Search", "Team", "Java", "Debug", "Refactor", "Navigate",
		"Source", "Project", "Build", "Git", "Quick Access", "Find Actions", "Perspective", "Working Set", "Marketplace",
		"Cheat Sheets", "Check for Updates", "Open File", "Restart", "Delimiters", "Keybindings");

	@Test
	void productIsOurs() {
		assertEquals("wainscribe.app.product", Platform.getProduct().getId());
		assertEquals("Wainscribe", Platform.getProduct().getName());
	}

	@Test
	void windowOpensOnTheDesignPerspective() {
		IWorkbenchWindow window = window();
		assertEquals("wainscribe.ui.design", window.getActivePage().getPerspective().getId());
		assertTrue(window.getShell().getText().endsWith("Wainscribe"), window.getShell().getText());
	}

	@Test
	void menuBarHoldsOurMenusInOrder() {
		List<String> titles = Arrays.stream(menuBar().getItems()).map(WorkbenchTest::plain).toList();
		assertEquals(MENUS, titles.stream().filter(MENUS::contains).toList());
		assertTrue(titles.indexOf("Help") == titles.size() - 1, "Help comes last: " + titles);
	}

	@Test
	void noMenuEntryIsForeign() {
		List<String> entries = entries(menuBar());
		List<String> foreign = entries.stream().filter(entry -> FOREIGN.stream().anyMatch(entry::contains)).toList();
		assertEquals(List.of(), foreign, "among " + entries);
	}

	@Test
	void dailyEntriesAreThere() {
		List<String> entries = entries(menuBar());
		assertAll(Stream.of("Save", "Save All", "Close", "Exit", "Undo", "Redo", "Cut", "Copy", "Paste", "Delete",
			"Select All", "Light", "Dark", "Restore Arrangement", "About Wainscribe")
			.map(entry -> () -> assertTrue(entries.contains(entry), entry + " is missing in " + entries)));
	}

	@Test
	void onlyOurKeysAreBound() {
		IBindingService keys = window().getService(IBindingService.class);
		assertEquals("wainscribe.app.keys", keys.getActiveScheme().getId());
		List<String> foreign = Arrays.stream(keys.getBindings())
			.filter(binding -> "wainscribe.app.keys".equals(binding.getSchemeId()) && binding.getParameterizedCommand() == null)
			.map(Binding::toString).toList();
		assertEquals(List.of(), foreign, "keys bound to a command that does not exist");
		assertNotNull(keys.getBestActiveBindingFor("org.eclipse.ui.file.save"), "the key for Save");
		assertFalse(keys.isPerfectMatch(sequence("Ctrl+3")), "a key for finding commands was left over");
	}

	@Test
	void appearanceChangesAndIsMarked() {
		String before = checkedAppearance();
		String other = before.equals("Dark") ? "Light" : "Dark";
		choose(other);
		assertEquals(other, checkedAppearance());
		choose(before);
		assertEquals(before, checkedAppearance());
	}

	private static KeySequence sequence(String text) {
		try {
			return KeySequence.getInstance(text);
		} catch (ParseException e) {
			throw new IllegalArgumentException(text, e);
		}
	}

	private static String checkedAppearance() {
		return items(menuBar()).stream().filter(item -> (item.getStyle() & SWT.RADIO) != 0 && item.getSelection())
			.map(WorkbenchTest::plain).filter(List.of("Light", "Dark")::contains).findFirst().orElse("none");
	}

	private static void choose(String entry) {
		MenuItem item = items(menuBar()).stream().filter(each -> plain(each).equals(entry)).findFirst().orElseThrow();
		for (MenuItem sibling : item.getParent().getItems()) {
			sibling.setSelection(sibling == item);
		}
		item.notifyListeners(SWT.Selection, new Event());
		while (item.getDisplay().readAndDispatch()) {
			// until everything that follows from the choice is done
		}
	}

	private static List<String> entries(Menu menu) {
		return items(menu).stream().map(WorkbenchTest::plain).filter(text -> !text.isEmpty()).toList();
	}

	/** Every entry below a menu; opens each menu as a person would, because some are filled only then. */
	private static List<MenuItem> items(Menu menu) {
		menu.notifyListeners(SWT.Show, new Event());
		List<MenuItem> items = new ArrayList<>();
		for (MenuItem item : menu.getItems()) {
			items.add(item);
			if (item.getMenu() != null) {
				items.addAll(items(item.getMenu()));
			}
		}
		return items;
	}

	private static String plain(MenuItem item) {
		return item.getText().replaceAll("\t.*", "").replace("&", "");
	}

	private static Menu menuBar() {
		return window().getShell().getMenuBar();
	}

	private static IWorkbenchWindow window() {
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		return window == null ? PlatformUI.getWorkbench().getWorkbenchWindows()[0] : window;
	}
}
