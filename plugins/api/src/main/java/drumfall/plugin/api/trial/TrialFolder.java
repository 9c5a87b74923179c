// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.api.trial;

import drumfall.plugin.api.ExportFolder;
import drumfall.plugin.api.Stability;
import drumfall.plugin.api.Stability.Level;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * An export folder in memory; it refuses names that are taken, and leaves the other rules to the program.
 *
 * @since 1.0
 */
@Stability(level = Level.EXPERIMENTAL, since = "1.0")
public final class TrialFolder implements ExportFolder {
    private final Map<String, ByteArrayOutputStream> files = new TreeMap<>();

    /** An empty folder. */
    public TrialFolder() {}

    @Override
    public OutputStream create(String name) {
        ByteArrayOutputStream stream = new ByteArrayOutputStream();
        if (files.putIfAbsent(name, stream) != null) {
            throw new IllegalArgumentException("The file name (%s) must be used only once.".formatted(name));
        }
        return stream;
    }

    /** Names of the files, sorted. */
    public List<String> names() {
        return new ArrayList<>(files.keySet());
    }

    /**
     * What was written to a file.
     *
     * @param name one of {@link #names()}
     * @throws IllegalArgumentException if there is no such file
     */
    public byte[] bytes(String name) {
        ByteArrayOutputStream stream = files.get(name);
        if (stream == null) {
            throw new IllegalArgumentException(
                    "The file (%s) was not written. Maybe one of %s was meant.".formatted(name, names()));
        }
        return stream.toByteArray();
    }

    /**
     * What was written to a file, as UTF-8 text.
     *
     * @param name one of {@link #names()}
     * @throws IllegalArgumentException if there is no such file
     */
    public String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }
}
