// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ExportProgress;

/**
 * The progress of one exporter among several.
 *
 * @param whole told how far all of them are
 * @param index of the exporter, from 0
 * @param count of exporters
 * @param id the exporter's
 */
record PartOfExport(ExportProgress whole, int index, int count, String id) implements ExportProgress {
    @Override
    public void at(double share, String doing) {
        double known = share >= 0 && share <= 1 ? share : 0;
        whole.at((index + known) / count, id + ": " + doing);
    }

    @Override
    public boolean cancelled() {
        return whole.cancelled();
    }
}
