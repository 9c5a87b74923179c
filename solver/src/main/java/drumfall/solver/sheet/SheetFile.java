// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Reads the text of a file, or says in plain words why there is none. */
final class SheetFile {
    /** The most bytes read; anything longer is refused by its first part. */
    private static final int MOST_BYTES = 4 * SheetText.LONGEST;

    private SheetFile() {}

    static Optional<String> text(Path file, Findings findings) {
        try (InputStream stream = Files.newInputStream(file)) {
            byte[] bytes = stream.readNBytes(MOST_BYTES + 1);
            return bytes.length > MOST_BYTES ? tooLong(file, findings) : decoded(file, bytes, findings);
        } catch (IOException | SecurityException fault) {
            boolean there = Files.exists(file);
            return refused(
                    file,
                    there ? "the file cannot be read" : "there is no such file",
                    there ? "check that it is a file and that you may read it" : "check its name and folder",
                    findings);
        }
    }

    private static Optional<String> tooLong(Path file, Findings findings) {
        return refused(
                file,
                "the file must have at most %d bytes".formatted(MOST_BYTES),
                "check that this is the right file",
                findings);
    }

    private static Optional<String> decoded(Path file, byte[] bytes, Findings findings) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            // UTF-16 without a byte order mark decodes as letters with NUL between them.
            return text.indexOf('\0') < 0 ? Optional.of(text) : wrongEncoding(file, findings);
        } catch (CharacterCodingException fault) {
            return wrongEncoding(file, findings);
        }
    }

    private static Optional<String> wrongEncoding(Path file, Findings findings) {
        return refused(
                file, "the file is not written in UTF-8", "save it as UTF-8 without a byte order mark", findings);
    }

    private static Optional<String> refused(Path file, String rule, String remedy, Findings findings) {
        String name = String.valueOf(file.getFileName());
        findings.add(Place.TOP, "the file " + SheetProblem.shortened(name), rule, remedy);
        return Optional.empty();
    }
}
