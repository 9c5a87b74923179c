// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ExportProgress;

/** The progress a plugin speaks to: passes on what can be shown, and nothing once the export has ended. */
final class ShownProgress implements ExportProgress {
    private final ExportProgress watcher;
    private volatile boolean ended;

    ShownProgress(ExportProgress watcher) {
        this.watcher = watcher;
    }

    @Override
    public void at(double share, String doing) {
        if (!ended) {
            watcher.at(share >= 0 && share <= 1 ? share : Double.NaN, FaultText.oneLine(String.valueOf(doing)));
        }
    }

    @Override
    public boolean cancelled() {
        return ended || watcher.cancelled();
    }

    void end() {
        ended = true;
    }
}
