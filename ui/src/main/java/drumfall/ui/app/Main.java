// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import java.awt.GraphicsEnvironment;

/** Starts the program: with arguments the terminal, otherwise the window. */
public final class Main {
    private Main() {}

    /**
     * Runs the command line or opens the window.
     *
     * @param arguments the command line
     */
    public static void main(String[] arguments) {
        if (arguments.length == 0 && !GraphicsEnvironment.isHeadless()) {
            WindowProgram.open();
        }
    }
}
