// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import drumfall.ui.design.DesignFault.Kind;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;

/** Reads and writes texts as whole files: a file is the earlier one or the new one, never a part. */
public final class WholeFile {
    /** A hundred times the longest sensible design. */
    private static final int MOST_BYTES = 4_000_000;

    /** Writes bytes to a new file; tests put a full disk in its place. */
    interface Sink {
        void write(Path file, byte[] bytes) throws IOException;
    }

    private WholeFile() {}

    /** The text of a file, or the fault as a refusal. */
    public static Read read(Path file) {
        String name = name(file);
        try (InputStream stream = Files.newInputStream(file)) {
            byte[] bytes = stream.readNBytes(MOST_BYTES + 1);
            return bytes.length > MOST_BYTES ? Read.fault(Kind.TOO_LONG, name) : decoded(bytes, name);
        } catch (NoSuchFileException fault) {
            return Read.fault(Kind.MISSING, name);
        } catch (IOException | SecurityException fault) {
            return Read.fault(Kind.UNREADABLE, name);
        }
    }

    private static Read decoded(byte[] bytes, String name) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.indexOf('\0') < 0
                    ? new Read(Optional.of(text), Optional.empty())
                    : Read.fault(Kind.NOT_TEXT, name);
        } catch (CharacterCodingException fault) {
            return Read.fault(Kind.NOT_TEXT, name);
        }
    }

    /**
     * What reading came to: exactly one of the two.
     *
     * @param text the text
     * @param fault why there is none
     */
    public record Read(Optional<String> text, Optional<DesignFault> fault) {
        static Read fault(Kind kind, String name) {
            return new Read(Optional.empty(), Optional.of(DesignFault.of(kind, name)));
        }
    }

    /** Writes a text; the answer is the fault, if there is one, and then the earlier file stands untouched. */
    public static Optional<DesignFault> write(Path file, String text) {
        return write(file, text, WholeFile::toDisk);
    }

    static Optional<DesignFault> write(Path file, String text, Sink sink) {
        Path target = resolved(file);
        Path folder = target.toAbsolutePath().getParent();
        if (!Files.isDirectory(folder)) {
            return fault(Kind.NO_FOLDER, file);
        }
        Path part = folder.resolve(
                "." + name(target) + "." + ProcessHandle.current().pid() + ".part");
        try {
            if (Files.exists(target) && !Files.isWritable(target)) {
                return fault(Kind.READ_ONLY, file);
            }
            sink.write(part, text.getBytes(StandardCharsets.UTF_8));
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            return Optional.empty();
        } catch (AccessDeniedException | ReadOnlyFileSystemException | SecurityException fault) {
            return fault(Kind.READ_ONLY, file);
        } catch (IOException fault) {
            return failed(file, fault);
        } finally {
            discard(part);
        }
    }

    /** A link stays a link: what it points to is replaced. */
    private static Path resolved(Path file) {
        try {
            return Files.exists(file) ? file.toRealPath() : file;
        } catch (IOException | SecurityException fault) {
            return file;
        }
    }

    private static void toDisk(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    private static void discard(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException | SecurityException kept) {
            System.getLogger(WholeFile.class.getName()).log(System.Logger.Level.DEBUG, "A part file stays.", kept);
        }
    }

    private static Optional<DesignFault> failed(Path file, IOException fault) {
        String reason = String.valueOf(fault.getMessage());
        String lower = reason.toLowerCase(Locale.ROOT);
        if (lower.contains("no space") || lower.contains("not enough space") || lower.contains("quota")) {
            return fault(Kind.FULL, file);
        }
        if (lower.contains("read-only")) {
            return fault(Kind.READ_ONLY, file);
        }
        return Optional.of(DesignFault.of(Kind.NOT_WRITTEN, name(file), reason));
    }

    private static Optional<DesignFault> fault(Kind kind, Path file) {
        return Optional.of(DesignFault.of(kind, name(file)));
    }

    static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
