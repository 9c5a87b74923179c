// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BundledBriefs;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The brief a command works on: a file, a bundled brief, or else the demonstration. */
final class BriefChoice {
    @Parameters(index = "0", arity = "0..1", paramLabel = "BRIEF.json", descriptionKey = "option.brief")
    private String file;

    @Option(names = "--bundled", paramLabel = "NAME", descriptionKey = "option.bundled")
    private String bundled;

    Brief brief() {
        if (file != null && bundled != null) {
            throw RefusedInput.of("two-briefs", file, bundled);
        }
        if (file != null) {
            return SheetTexts.brief(file);
        }
        return bundled == null ? BundledBriefs.demo() : SheetTexts.bundled(bundled);
    }
}
