// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api;

import drumfall.plugin.api.Stability.Level;
import java.io.IOException;
import java.util.List;

/**
 * Turns a chosen train into files.
 *
 * <p>An implementation has a public constructor without parameters and is named in its jar's
 * {@code META-INF/services/drumfall.plugin.api.Exporter}; the jar's manifest states the api it was written for (see
 * {@link ApiVersion}). The program makes one instance and may call {@link #export} several times, one call at a time,
 * never on the event thread.
 *
 * @since 1.0
 */
@Stability(level = Level.STABLE, since = "1.0")
public interface Exporter {
    /**
     * Names the exporter for terminal commands and folders; always the same.
     *
     * @return lower-case letters, digits and single hyphens, a letter first, at most 40 characters; never {@code null}.
     *     Where two exporters claim one id, the first one found is used and the second one named as at fault.
     */
    String id();

    /**
     * Names the exporter for people; always the same.
     *
     * @return one line of at most 80 characters, for example {@code "Outlines (SVG and DXF)"}; never {@code null}
     */
    String title();

    /**
     * Names what the maker may set about an export; always the same, asked once. The program shows the settings, checks what
     * is set, and hands over the values in {@link Handover#settings()}.
     *
     * @return at most 40, with different ids, in the order in which they are shown; empty if there is nothing to set
     * @since 1.1
     */
    default List<ExportSetting<?>> settings() {
        return List.of();
    }

    /**
     * Writes the files of one train.
     *
     * <p>Nothing the exporter writes is seen by anyone until this method has returned and every stream is closed; then
     * all of it takes the place of the earlier export at once. Whatever is thrown ends the export and leaves the earlier
     * one as it was. The same train with the same values of the settings should give the same bytes.
     *
     * @param handover what to export, never {@code null}
     * @param folder the only place to write to, never {@code null}; of no use after this method has returned
     * @param progress told how far the work is, asked whether to stop; never {@code null}
     * @throws IOException if a file cannot be written; let the folder's own exceptions through
     * @throws RefusedExportException if the maker has to change something first
     */
    void export(Handover handover, ExportFolder folder, ExportProgress progress) throws IOException;
}
