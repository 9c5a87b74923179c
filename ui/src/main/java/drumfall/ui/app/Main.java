// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import drumfall.ui.terminal.Terminal;
import java.awt.GraphicsEnvironment;

/** Starts the program: with arguments the terminal, otherwise the window, or without a display the demonstration. */
public final class Main {
    private Main() {}

    /**
     * Runs the command line, opens the window, or prints the demonstration where no window can open.
     *
     * @param arguments the command line
     */
    public static void main(String[] arguments) {
        if (arguments.length > 0) {
            System.exit(Terminal.runInProcess(arguments));
        } else if (GraphicsEnvironment.isHeadless()) {
            System.exit(Terminal.runWithoutDisplay());
        } else {
            WindowProgram.open();
        }
    }
}
