// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;

/** Every word that the window shows, by key. */
public final class Texts {
    private static final ResourceBundle BUNDLE =
            ResourceBundle.getBundle("drumfall.ui.presenter.texts", Locale.ENGLISH);

    private Texts() {}

    /**
     * The text of a key with its values put in.
     *
     * @param key a key of the bundle
     * @param values what stands for {0}, {1} and so on, shown as they are
     * @throws java.util.MissingResourceException if there is no such key
     */
    public static String of(String key, Object... values) {
        String text = BUNDLE.getString(key);
        return values.length == 0 ? text : new MessageFormat(text, Locale.ENGLISH).format(shown(values));
    }

    /** Numbers are written without separators: a count is a count. */
    private static Object[] shown(Object... values) {
        Object[] texts = new Object[values.length];
        for (int i = 0; i < values.length; i++) {
            texts[i] = String.valueOf(values[i]);
        }
        return texts;
    }

    /** Whether there is a text for a key. */
    public static boolean has(String key) {
        return BUNDLE.containsKey(key);
    }

    /** Every key there is. */
    public static Set<String> keys() {
        return BUNDLE.keySet();
    }
}
