// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import java.util.List;

/**
 * Why a design could not be opened or saved; its kind and details make one sentence.
 *
 * @param kind what went wrong
 * @param details values the sentence names, the file's name first
 */
public record DesignFault(Kind kind, List<String> details) {
    /** What can go wrong with a file. */
    public enum Kind {
        /** There is no such file. */
        MISSING,
        /** The file is there and cannot be read. */
        UNREADABLE,
        /** The file is longer than any design. */
        TOO_LONG,
        /** The file is not text in UTF-8. */
        NOT_TEXT,
        /** The text is not JSON; details give line and column. */
        NOT_JSON,
        /** The file is something else than a design. */
        OTHER_FORMAT,
        /** The file is in a newer version; details give its version and the newest known. */
        NEWER,
        /** The brief in it is beyond what the sheet can show; details give the first problem. */
        BRIEF_REFUSED,
        /** The train in it is not in order; details give the first problem. */
        TRAIN_REFUSED,
        /** The arbors drawn in it are not in order; details give the problem. */
        DRAWN_REFUSED,
        /** Another program holds the file open. */
        OPEN_ELSEWHERE,
        /** The folder or file must not be written. */
        READ_ONLY,
        /** No room is left where the file should go. */
        FULL,
        /** The folder is not there. */
        NO_FOLDER,
        /** Writing failed for another reason; details give it. */
        NOT_WRITTEN
    }

    /** Copies the list. */
    public DesignFault {
        details = List.copyOf(details);
    }

    /** A fault with its details. */
    public static DesignFault of(Kind kind, String... details) {
        return new DesignFault(kind, List.of(details));
    }
}
