// SPDX-License-Identifier: EPL-2.0
package wainscribe.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.InputStream;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.Properties;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every text has its key and every key its text. */
class MessagesTest {

	@ParameterizedTest
	@ValueSource(strings = { "", "closure.", "draft.", "form.", "table." })
	void keysAndTextsMatch(String part) throws Exception {
		Class<?> messages = Class.forName("wainscribe.survey." + part + "Messages");
		Properties texts = new Properties();
		try (InputStream stream = messages.getResourceAsStream("messages.properties")) {
			texts.load(stream);
		}
		var fields = Arrays.stream(messages.getDeclaredFields()).filter(field -> Modifier.isPublic(field.getModifiers())).toList();
		assertEquals(new TreeSet<>(texts.stringPropertyNames()), fields.stream().map(Field::getName).collect(Collectors.toCollection(TreeSet::new)));
		for (Field field : fields) {
			field.setAccessible(true);
			assertFalse(String.valueOf(field.get(null)).isEmpty());
			assertEquals(texts.getProperty(field.getName()), field.get(null));
		}
	}
}
