// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.view;

import java.nio.file.Path;
import java.util.Optional;

/** Asks the maker for a file or folder; tests answer in the maker's place. */
public interface FileChoice {
    /** A design to open; empty if the maker thought better of it. */
    Optional<Path> toOpen();

    /**
     * Where to save a design.
     *
     * @param proposed a name to begin with
     */
    Optional<Path> toSave(String proposed);

    /**
     * The folder an export goes to.
     *
     * @param title what is exported
     */
    Optional<Path> exportFolder(String title);

    /**
     * The zip file that all exports are packed into.
     *
     * @param proposed a name to begin with, without its ending
     */
    Optional<Path> exportZip(String proposed);
}
