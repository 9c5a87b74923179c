// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.record;

import drumfall.plugin.api.ExportFolder;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Exporter;
import drumfall.plugin.api.Handover;
import drumfall.solver.brief.TrainReader;
import drumfall.solver.brief.TrainSheet;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Writes the train record, the train as a file that the program reads, and the parts list. */
public final class TrainRecordExporter implements Exporter {
    static final String RECORD = "train.json";
    static final String SHEET = "train-to-rate.json";
    static final String PARTS = "parts.csv";

    /** Called by the service loader. */
    public TrainRecordExporter() {}

    @Override
    public String id() {
        return "train-record";
    }

    @Override
    public String title() {
        return "Train record (JSON) and parts list (CSV)";
    }

    @Override
    public void export(Handover handover, ExportFolder folder, ExportProgress progress) throws IOException {
        List<Part> parts = PartList.of(handover);
        progress.at(0, RECORD);
        try (OutputStream out = folder.create(RECORD)) {
            TrainRecord.write(handover, parts, out);
        }
        if (progress.cancelled()) {
            return;
        }
        progress.at(0.4, SHEET);
        try (OutputStream out = folder.create(SHEET)) {
            TrainSheet sheet =
                    TrainSheet.of(handover.brief().name(), handover.rating().train());
            out.write(TrainReader.write(sheet).getBytes(StandardCharsets.UTF_8));
        }
        progress.at(0.5, PARTS);
        try (OutputStream out = folder.create(PARTS)) {
            PartsCsv.write(parts, out);
        }
    }
}
