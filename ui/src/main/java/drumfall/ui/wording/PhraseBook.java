// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.wording;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;

/**
 * A bundle of phrases in which places are kept for values, as {@link MessageFormat} writes them.
 *
 * <p>Values are put in as text; numbers are formatted by whoever knows their unit.
 */
public final class PhraseBook {
    private final ResourceBundle bundle;

    private PhraseBook(ResourceBundle bundle) {
        this.bundle = bundle;
    }

    /**
     * The phrases of a bundle.
     *
     * @param name of the bundle, with its package
     * @throws java.util.MissingResourceException if there is no such bundle
     */
    public static PhraseBook of(String name) {
        return new PhraseBook(ResourceBundle.getBundle(name));
    }

    /**
     * A phrase with its values.
     *
     * @param key of the phrase
     * @param values what it speaks of, in order; shown by {@link String#valueOf}
     * @throws java.util.MissingResourceException if there is no such phrase
     */
    public String phrase(String key, Object... values) {
        Object[] texts = new Object[values.length];
        for (int i = 0; i < values.length; i++) {
            texts[i] = String.valueOf(values[i]);
        }
        return new MessageFormat(bundle.getString(key), Locale.ROOT).format(texts);
    }

    /**
     * A phrase that need not be there.
     *
     * @param key of the phrase
     * @param values what it speaks of, in order
     */
    public Optional<String> phraseIfAny(String key, Object... values) {
        return bundle.containsKey(key) ? Optional.of(phrase(key, values)) : Optional.empty();
    }

    /** The bundle itself, for libraries that read from it. */
    public ResourceBundle bundle() {
        return bundle;
    }
}
