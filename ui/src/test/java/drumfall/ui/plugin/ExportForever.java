// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.plugin;

import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Handover;
import drumfall.plugin.api.trial.TrialHandover;
import drumfall.ui.plugin.PluginFolder.Origin;
import java.nio.file.Path;
import java.util.List;

/** Exports over and over until it is killed; run as a program of its own. */
final class ExportForever {
    private ExportForever() {}

    /**
     * Runs.
     *
     * @param arguments plugin folder and target folder
     */
    public static void main(String[] arguments) {
        Handover handover = TrialHandover.eightDays();
        List<PluginFolder> folders = List.of(new PluginFolder(Origin.USER, Path.of(arguments[0])));
        try (PluginHost host = PluginHost.load(folders)) {
            while (true) {
                ExportOutcome outcome = host.export("odd", handover, Path.of(arguments[1]), ExportProgress.unwatched());
                System.out.println(outcome);
                System.out.flush();
            }
        }
    }
}
