// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.outlines;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.trial.TrialFolder;
import drumfall.plugin.api.trial.TrialHandover;
import java.io.IOException;
import java.io.UncheckedIOException;

/** Outlines of the trial clock, in memory. */
final class Exports {
    private Exports() {}

    static TrialFolder eightDays() {
        TrialFolder folder = new TrialFolder();
        try {
            new OutlinesExporter().export(TrialHandover.eightDays(), folder, ExportProgress.unwatched());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return folder;
    }
}
