// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view.train;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The words of the drawings. */
final class TrainText {
    private static final ResourceBundle BUNDLE =
            ResourceBundle.getBundle("drumfall.ui.view.train.words", Locale.getDefault());

    private TrainText() {}

    /**
     * A text with its values put in.
     *
     * @param key the key
     * @param values what stands for {0}, {1}, …
     */
    static String of(String key, Object... values) {
        return new MessageFormat(BUNDLE.getString(key), Locale.ROOT).format(values);
    }
}
