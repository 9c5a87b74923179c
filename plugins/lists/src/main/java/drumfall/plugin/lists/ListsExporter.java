// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.lists;

import drumfall.plugin.api.ExportFolder;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.ExportSetting;
import drumfall.plugin.api.Exporter;
import drumfall.plugin.api.Handover;
import drumfall.plugin.api.RefusedExportException;
import drumfall.solver.fit.FitException;
import drumfall.solver.kit.Kit;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.rating.TrainRater;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** Writes parts, holes, arbors, cuts, shopping and builds as CSV, and all of them as {@code lists.html}, or either. */
public final class ListsExporter implements Exporter {
    private static final String CSV = "csv";
    private static final String HTML = "html";

    /** Which kinds of file. */
    static final ExportSetting.Choice FILES = new ExportSetting.Choice(
            "files",
            "Files",
            "Which files are written.",
            "both",
            List.of(
                    new ExportSetting.Choice.Value("both", "CSV and HTML"),
                    new ExportSetting.Choice.Value(CSV, "A CSV file for each list"),
                    new ExportSetting.Choice.Value(HTML, "One HTML page")));

    /** What stands between the cells. */
    static final ExportSetting.Choice SEPARATOR = new ExportSetting.Choice(
            "separator",
            "Cells divided by",
            "What divides cells in CSV files; spreadsheets whose decimals have a comma mostly read the semicolon.",
            Csv.Separator.COMMA.id(),
            Stream.of(Csv.Separator.values())
                    .map(separator -> new ExportSetting.Choice.Value(separator.id(), separator.title()))
                    .toList());

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
    public List<ExportSetting<?>> settings() {
        return List.of(FILES, SEPARATOR);
    }

    @Override
    public void export(Handover handover, ExportFolder folder, ExportProgress progress) throws IOException {
        List<Table> tables = tables(handover);
        String files = handover.settings().of(FILES);
        if (!files.equals(HTML)) {
            writeCsv(tables, Csv.Separator.of(handover.settings().of(SEPARATOR)), folder, progress);
        }
        if (!files.equals(CSV)) {
            writePage(handover, tables, folder);
        }
    }

    /** A stock rod that is too short is the maker's to change. */
    private static List<Table> tables(Handover handover) {
        try {
            return new KitTables(Kit.of(new TrainRater(handover.brief()), handover.rating(), handover.layout())).all();
        } catch (FitException | SizeLimitException refused) {
            throw new RefusedExportException(refused.getMessage());
        }
    }

    private static void writeCsv(
            List<Table> tables, Csv.Separator separator, ExportFolder folder, ExportProgress progress)
            throws IOException {
        for (int i = 0; i < tables.size() && !progress.cancelled(); i++) {
            String name = tables.get(i).file() + ".csv";
            progress.at((double) i / (tables.size() + 1), name);
            try (OutputStream out = folder.create(name)) {
                out.write(Csv.text(tables.get(i), separator).getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    private static void writePage(Handover handover, List<Table> tables, ExportFolder folder) throws IOException {
        try (OutputStream out = new BufferedOutputStream(folder.create("lists.html"))) {
            ListsPage.write(handover.brief().name(), handover.rating().train().toString(), tables, out);
        }
    }
}
