// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.io.IOException;
import java.io.OutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Objects;

/** One file being staged: counts and hashes what passes. */
final class StagedFile extends OutputStream {
    private final StagedFolder folder;
    private final String name;
    private final OutputStream out;
    private final MessageDigest digest = sha256();
    private long size;
    private boolean closed;

    StagedFile(StagedFolder folder, String name, OutputStream out) {
        this.folder = folder;
        this.name = name;
        this.out = out;
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java platform must have SHA-256.", impossible);
        }
    }

    String name() {
        return name;
    }

    /** Whether the exporter closed it. */
    boolean isClosed() {
        synchronized (folder) {
            return closed;
        }
    }

    /** Its size and hash; meaningful once it is closed. */
    WrittenFile written() {
        synchronized (folder) {
            return new WrittenFile(
                    name, size, HexFormat.of().formatHex(clonedDigest().digest()));
        }
    }

    private MessageDigest clonedDigest() {
        try {
            return (MessageDigest) digest.clone();
        } catch (CloneNotSupportedException impossible) {
            throw new IllegalStateException("The platform's SHA-256 must be cloneable.", impossible);
        }
    }

    @Override
    public void write(int value) throws IOException {
        write(new byte[] {(byte) value}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
        Objects.checkFromIndexSize(offset, length, bytes.length);
        synchronized (folder) {
            requireWritable();
            try {
                out.write(bytes, offset, length);
            } catch (IOException broken) {
                throw folder.failed(broken);
            }
            digest.update(bytes, offset, length);
            size += length;
        }
    }

    private void requireWritable() throws IOException {
        folder.requireOpen();
        if (closed) {
            throw new IOException("The file (%s) must not be written to after it was closed.".formatted(name));
        }
    }

    @Override
    public void close() throws IOException {
        synchronized (folder) {
            if (closed) {
                return;
            }
            folder.requireOpen();
            closed = true;
            try {
                out.close();
            } catch (IOException broken) {
                throw folder.failed(broken);
            }
        }
    }

    /** Closes the file of the system, whoever closed what before. */
    void abandon() throws IOException {
        out.close();
    }
}
