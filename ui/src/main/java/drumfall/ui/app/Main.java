// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

/** Starts the program. */
public final class Main {
    private Main() {}

    /**
     * Runs the terminal command.
     *
     * @param arguments the command line
     */
    public static void main(String[] arguments) {}
}
