// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api;

import drumfall.plugin.api.Stability.Level;
import java.io.IOException;
import java.io.OutputStream;

/**
 * The only place an exporter writes to.
 *
 * @since 1.0
 */
@FunctionalInterface
@Stability(level = Level.STABLE, since = "1.0")
public interface ExportFolder {
    /**
     * Opens a new file.
     *
     * <p>A name is one to five parts joined by {@code /}. Each part has 1 to 100 characters, none of them a control
     * character or one of {@code \ : * ? " < > |}, does not begin or end with a space or a full stop, and is no device
     * name such as {@code NUL} or {@code COM1}, whatever its ending (Microsoft, <i>Naming Files, Paths, and
     * Namespaces</i>): a name that is good on one system is good on all. Two names that differ only in upper and lower
     * case are one name. {@code files.sha256} is kept for the program's own list.
     *
     * @param name for example {@code "arbor-2-pinion.svg"}
     * @return a stream to be closed by the exporter before it returns; not buffered
     * @throws IllegalArgumentException if the name breaks a rule, leaves the folder or is taken; the whole export then
     *     fails, even if the exporter catches this
     * @throws IOException if the file cannot be opened, or the export has been given up
     */
    OutputStream create(String name) throws IOException;
}
