// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.app;

import java.util.Optional;

/** The version of this program. */
final class Version {
    private Version() {}

    /** The version that the build wrote into the jar; "unpacked" when run from loose classes. */
    static String text() {
        return Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
                .orElse("unpacked");
    }
}
