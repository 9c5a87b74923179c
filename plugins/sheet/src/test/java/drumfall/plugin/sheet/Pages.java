// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.sheet;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** Reads what was written. */
final class Pages {
    private Pages() {}

    /** The text of a document, every run of white space one space. */
    static String text(byte[] document) throws IOException {
        try (PDDocument read = Loader.loadPDF(document)) {
            return oneLine(new PDFTextStripper().getText(read));
        }
    }

    static String oneLine(String text) {
        return text.replaceAll("\\s+", " ");
    }

    /** What a program says; where there is no such program, {@code not installed}. */
    static String answer(String... command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(Arrays.asList(command))
                    .redirectErrorStream(true)
                    .start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (!process.waitFor(1, TimeUnit.MINUTES) || process.exitValue() != 0) {
                throw new IllegalStateException("The program (" + command[0] + ") must end well. It said: " + said);
            }
            return said;
        } catch (IOException notInstalled) {
            return "not installed";
        }
    }
}
