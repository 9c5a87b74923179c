// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import java.nio.file.Path;

/**
 * Where the program keeps what it remembers.
 *
 * @param home one folder for everything
 */
record Folders(Path home) {
    /** System property that names another folder than the usual one. */
    static final String PROPERTY = "drumfall.home";

    /** The folder of the person who runs the program. */
    static Folders usual() {
        String named = System.getProperty(PROPERTY, "");
        return new Folders(named.isEmpty() ? Path.of(System.getProperty("user.home"), ".drumfall") : Path.of(named));
    }

    Path settings() {
        return home.resolve("window.properties");
    }

    Path recovery() {
        return home.resolve("recovery");
    }
}
