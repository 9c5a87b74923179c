// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.ui.design.WholeFile;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;

/**
 * What the program remembers of one person from one day to the next: window, look, units, files used last.
 *
 * <p>Losing it costs nothing but comfort, so a file that cannot be read or written is passed over.
 */
public final class Settings {
    /** Files remembered. */
    public static final int MOST_RECENT = 8;

    private final Path file;
    private final Properties values = new Properties();

    /**
     * The settings in a file.
     *
     * @param file need not exist yet
     */
    public Settings(Path file) {
        this.file = file;
        WholeFile.read(file).text().ifPresent(this::take);
    }

    private void take(String text) {
        try {
            values.load(new StringReader(text));
        } catch (IOException | IllegalArgumentException damaged) {
            values.clear();
        }
    }

    /** A remembered value. */
    public Optional<String> get(String key) {
        return Optional.ofNullable(values.getProperty(key));
    }

    /** A remembered whole number; empty if what is there is none. */
    public Optional<Integer> number(String key) {
        return get(key).filter(text -> text.matches("-?\\d{1,6}")).map(Integer::valueOf);
    }

    /** Remembers a value. */
    public void put(String key, Object value) {
        if (!String.valueOf(value).equals(values.setProperty(key, String.valueOf(value)))) {
            store();
        }
    }

    /** Remembers no value any more. */
    public void forget(String key) {
        if (values.remove(key) != null) {
            store();
        }
    }

    /** Files used last, the newest first. */
    public List<Path> recent() {
        List<Path> files = new ArrayList<>();
        for (int i = 0; i < MOST_RECENT; i++) {
            get("recent." + i).flatMap(Settings::path).ifPresent(files::add);
        }
        return files;
    }

    private static Optional<Path> path(String text) {
        try {
            return Optional.of(Path.of(text));
        } catch (InvalidPathException damaged) {
            return Optional.empty();
        }
    }

    /** Remembers a file as the one used last. */
    public void used(Path design) {
        List<Path> files = recent();
        Path absolute = design.toAbsolutePath().normalize();
        files.remove(absolute);
        files.add(0, absolute);
        for (int i = 0; i < Math.min(MOST_RECENT, files.size()); i++) {
            values.setProperty("recent." + i, files.get(i).toString());
        }
        store();
    }

    private void store() {
        StringWriter text = new StringWriter();
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            values.store(text, null);
            WholeFile.write(file, text.toString());
        } catch (IOException | SecurityException fault) {
            System.getLogger(Settings.class.getName())
                    .log(System.Logger.Level.DEBUG, "The settings are not remembered.", fault);
        }
    }
}
