// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reports a fault of the program itself: one sentence on the screen, the details in a file. */
final class InternalFault {
    private InternalFault() {}

    static int report(Throwable fault, TerminalPlace place) {
        place.err().println(sentence(fault, place.faultFolder()));
        return ExitCode.INTERNAL_FAULT.number();
    }

    private static String sentence(Throwable fault, Path folder) {
        try {
            Path file = Files.createTempFile(folder, "drumfall-fault-", ".txt");
            try (PrintWriter writer = new PrintWriter(Files.newBufferedWriter(file))) {
                fault.printStackTrace(writer);
            }
            return Phrases.phrase("fault.written", file);
        } catch (IOException unwritable) {
            return Phrases.phrase("fault.unwritten", fault.getClass().getSimpleName(), folder);
        }
    }
}
