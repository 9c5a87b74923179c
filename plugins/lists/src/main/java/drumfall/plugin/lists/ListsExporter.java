// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.lists;

import drumfall.plugin.api.ExportFolder;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Exporter;
import drumfall.plugin.api.Handover;
import drumfall.solver.kit.Kit;
import drumfall.solver.rating.TrainRater;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Writes parts, holes, arbors, cuts, shopping and builds as CSV, and all of them as {@code lists.html}. */
public final class ListsExporter implements Exporter {
    /** An exporter. */
    public ListsExporter() {}

    @Override
    public String id() {
        return "lists";
    }

    @Override
    public String title() {
        return "Lists (CSV and HTML)";
    }

    @Override
    public void export(Handover handover, ExportFolder folder, ExportProgress progress) throws IOException {
        Kit kit = Kit.of(new TrainRater(handover.brief()), handover.rating(), handover.layout());
        List<Table> tables = new KitTables(kit).all();
        for (int i = 0; i < tables.size() && !progress.cancelled(); i++) {
            String name = tables.get(i).file() + ".csv";
            progress.at((double) i / (tables.size() + 1), name);
            try (OutputStream out = folder.create(name)) {
                out.write(Csv.text(tables.get(i)).getBytes(StandardCharsets.UTF_8));
            }
        }
        try (OutputStream out = new BufferedOutputStream(folder.create("lists.html"))) {
            ListsPage.write(handover.brief().name(), handover.rating().train().toString(), tables, out);
        }
    }
}
