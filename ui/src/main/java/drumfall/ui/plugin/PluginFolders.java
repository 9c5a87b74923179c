// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.ui.plugin.PluginFolder.Origin;
import java.io.File;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Which folders are looked into for plugins, in the order in which an id is given to whoever claims it first. */
public final class PluginFolders {
    /** System property that lists further folders, separated like a class path; a run from the build sets it. */
    public static final String PROPERTY = "drumfall.plugins";

    private static final String FOLDER = "plugins";

    private PluginFolders() {}

    /** The folders of this running program: beside its jar, by property, the user's {@code .drumfall/plugins}. */
    public static List<PluginFolder> ofThisProgram() {
        return of(
                programJar(),
                Optional.ofNullable(System.getProperty(PROPERTY)).orElse(""),
                Path.of(System.getProperty("user.home")));
    }

    /**
     * The folders in their order.
     *
     * @param programJar the program's jar, absent if it runs from loose classes
     * @param list folders separated by the system's path separator; may be empty
     * @param userHome the user's home
     */
    public static List<PluginFolder> of(Optional<Path> programJar, String list, Path userHome) {
        List<PluginFolder> folders = new ArrayList<>();
        programJar.ifPresent(jar -> folders.add(new PluginFolder(Origin.PROGRAM, jar.resolveSibling(FOLDER))));
        Stream.of(list.split(Pattern.quote(File.pathSeparator)))
                .filter(entry -> !entry.isBlank())
                .forEach(entry -> folders.add(new PluginFolder(Origin.PROPERTY, Path.of(entry.strip()))));
        folders.add(new PluginFolder(Origin.USER, userHome.resolve(".drumfall").resolve(FOLDER)));
        return folders;
    }

    private static Optional<Path> programJar() {
        return Optional.ofNullable(PluginFolders.class.getProtectionDomain().getCodeSource())
                .map(CodeSource::getLocation)
                .flatMap(location -> {
                    try {
                        return Optional.of(Path.of(location.toURI()));
                    } catch (URISyntaxException
                            | IllegalArgumentException
                            | java.nio.file.FileSystemNotFoundException e) {
                        return Optional.empty();
                    }
                })
                .filter(Files::isRegularFile);
    }
}
