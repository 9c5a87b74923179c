// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.nio.file.Path;

/**
 * A folder whose jars are plugins.
 *
 * @param origin why it is looked into
 * @param path the folder; it need not exist
 */
public record PluginFolder(Origin origin, Path path) {
    /** Why a folder is looked into. */
    public enum Origin {
        /** It lies beside the program. */
        PROGRAM,
        /** The system property {@value PluginFolders#PROPERTY} names it. */
        PROPERTY,
        /** It is the user's own. */
        USER
    }

    /** Makes the path absolute, so that it means the same wherever it is shown. */
    public PluginFolder {
        path = path.toAbsolutePath().normalize();
    }
}
