// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.nio.file.Path;
import java.util.List;

/** How an export ended. */
public sealed interface ExportOutcome {
    /**
     * All files are in place.
     *
     * @param folder the folder that holds them, or the zip file
     * @param files by name, sorted
     */
    record Written(Path folder, List<WrittenFile> files) implements ExportOutcome {
        /** Copies the list. */
        public Written {
            files = List.copyOf(files);
        }
    }

    /**
     * Nothing was changed; an earlier export is as it was.
     *
     * @param fault why
     */
    record Failed(PluginFault fault) implements ExportOutcome {}

    /** Nothing was changed because it was no longer wanted. */
    record Cancelled() implements ExportOutcome {}
}
