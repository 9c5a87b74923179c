// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.ui.plugin.PluginFolder;
import drumfall.ui.plugin.PluginFolders;
import java.io.Console;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Where a command runs.
 *
 * @param out takes what was asked for
 * @param err takes problems and progress
 * @param watched whether someone watches {@code err}, so that progress may be shown and wiped
 * @param interrupted true once the user wants the command to end
 * @param pluginFolders folders looked into for plugins
 * @param faultFolder where the details of an internal fault are written
 */
record TerminalPlace(
        PrintWriter out,
        PrintWriter err,
        boolean watched,
        BooleanSupplier interrupted,
        List<PluginFolder> pluginFolders,
        Path faultFolder) {
    /** Copies the list. */
    TerminalPlace {
        pluginFolders = List.copyOf(pluginFolders);
    }

    static TerminalPlace of(PrintWriter out, PrintWriter err, BooleanSupplier interrupted) {
        return new TerminalPlace(
                out,
                err,
                atTerminal(),
                interrupted,
                PluginFolders.ofThisProgram(),
                Path.of(System.getProperty("java.io.tmpdir")));
    }

    /** Up to Java 21 there is a console only at a terminal; from Java 22 on there always is one, and it tells. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean atTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException olderJava) {
            return true;
        } catch (ReflectiveOperationException unknown) {
            return false;
        }
    }
}
