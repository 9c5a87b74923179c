// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.search.SearchOutcome;
import drumfall.ui.design.Design;
import drumfall.ui.design.RecoveryFolder;
import drumfall.ui.work.SearchDesk;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

/** A program that edits and saves a design until it is killed, and says what it has edited. */
final class EditForever {
    private EditForever() {}

    /**
     * Edits and saves.
     *
     * @param arguments the folder, the seed, and how many milliseconds to rest between two edits at most
     */
    public static void main(String[] arguments) throws InterruptedException {
        Path folder = Path.of(arguments[0]);
        Random random = new Random(Long.parseLong(arguments[1]));
        int rest = Integer.parseInt(arguments[2]);
        SearchDesk desk =
                new SearchDesk(Runnable::run, (brief, listener, cancelled) -> new SearchOutcome.Stopped(List.of()));
        Workspace workspace = new Workspace(Design.of(SmallBriefs.small()), SmallBriefs.small(), desk);
        FileDesk files = new FileDesk(
                workspace,
                Runnable::run,
                Runnable::run,
                new Settings(folder.resolve("settings")),
                new RecoveryFolder(folder.resolve("recovery")));
        SheetRow row = BriefSheet.rowOf("/name").orElseThrow();
        files.saveAs(folder.resolve("clock"));
        for (int edit = 1; ; edit++) {
            new BriefEdits(workspace).enter(row, row.lines().get(0), "Clock " + edit);
            System.out.println(edit + " " + System.currentTimeMillis());
            if (random.nextInt(rest > 10 ? 100_000 : 10) == 0) {
                files.save();
            }
            Thread.sleep(random.nextInt(rest));
        }
    }
}
