// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Optional;

/** The process's own output, in the encoding of the terminal. */
final class StandardStreams implements AutoCloseable {
    private final PrintWriter out;
    private final PrintWriter err;

    StandardStreams() {
        this.out = writer(System.out);
        this.err = writer(System.err);
    }

    private static PrintWriter writer(PrintStream stream) {
        Charset charset = charset();
        return new PrintWriter(new SpellingWriter(new java.io.OutputStreamWriter(stream, charset), charset), true);
    }

    /** What the terminal understands: newer JDKs name the console's encoding, Java 17 that of the system. */
    private static Charset charset() {
        return named("stdout.encoding").or(() -> named("native.encoding")).orElseGet(Charset::defaultCharset);
    }

    private static Optional<Charset> named(String property) {
        try {
            return Optional.ofNullable(System.getProperty(property)).map(Charset::forName);
        } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
            return Optional.empty();
        }
    }

    PrintWriter out() {
        return out;
    }

    PrintWriter err() {
        return err;
    }

    /** Writes out what is left; the process's streams stay open. */
    @Override
    public void close() {
        out.flush();
        err.flush();
    }
}
