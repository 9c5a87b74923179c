// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** Says in a few words why a file operation failed. */
final class IoReason {
    private IoReason() {}

    static String of(IOException failure) {
        if (failure instanceof AccessDeniedException) {
            return FaultText.word("reason.denied");
        }
        if (failure instanceof FileAlreadyExistsException || failure instanceof NotDirectoryException) {
            return FaultText.word("reason.inTheWay");
        }
        if (failure instanceof NoSuchFileException) {
            return FaultText.word("reason.missing");
        }
        return said(failure);
    }

    private static String said(IOException failure) {
        String reason = failure instanceof FileSystemException system ? system.getReason() : failure.getMessage();
        return reason == null || reason.isBlank() ? failure.getClass().getSimpleName() : reason;
    }
}
