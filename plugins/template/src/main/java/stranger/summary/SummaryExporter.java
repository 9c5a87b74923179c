// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package stranger.summary;

import drumfall.plugin.api.ExportFolder;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.ExportSetting;
import drumfall.plugin.api.Exporter;
import drumfall.plugin.api.Handover;
import drumfall.solver.rating.Rating;
import drumfall.solver.train.Mesh;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

/** Writes a train's counts and weight on one page of text. */
public final class SummaryExporter implements Exporter {
    /** Shown, checked and remembered by the program. */
    static final ExportSetting.Text REMARK = new ExportSetting.Text(
            "remark", "Remark", "Puts a line of your own at the end of the page.", "", 200);

    /** The program makes exporters through a public constructor without parameters. */
    public SummaryExporter() {}

    @Override
    public String id() {
        return "summary";
    }

    @Override
    public String title() {
        return "Summary (text)";
    }

    @Override
    public List<ExportSetting<?>> settings() {
        return List.of(REMARK);
    }

    @Override
    public void export(Handover handover, ExportFolder folder, ExportProgress progress) throws IOException {
        try (OutputStream out = folder.create("summary.txt")) {
            out.write(page(handover).getBytes(StandardCharsets.UTF_8));
        }
    }

    private static String page(Handover handover) {
        Rating rating = handover.rating();
        StringBuilder page = new StringBuilder(handover.brief().name()).append("\n\n");
        for (Mesh mesh : rating.train().meshes()) {
            page.append("wheel ").append(mesh.toothCount());
            page.append(", pinion ").append(mesh.leafCount());
            page.append(", module ").append(mesh.module()).append(" mm\n");
        }
        page.append("escape wheel ").append(rating.train().escapeTeeth()).append("\n\n");
        page.append(String.format(Locale.ROOT, "recommended weight %.1f kg\n", rating.recommendedWeight()));
        page.append(rating.feasible() ? "every demand is met\n" : "not every demand is met\n");
        String remark = handover.settings().of(REMARK);
        return remark.isEmpty() ? page.toString() : page.append('\n').append(remark).append('\n').toString();
    }
}
