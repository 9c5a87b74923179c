// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.design;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Work that is on the screen and not in its file.
 *
 * @param design the work
 * @param origin the file it was opened from or last saved to, if any
 */
public record Unsaved(Design design, Optional<Path> origin) {}
