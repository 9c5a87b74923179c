// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package stranger.summary;

import drumfall.plugin.api.ExportFolder;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Exporter;
import drumfall.plugin.api.Handover;
import drumfall.solver.rating.Rating;
import drumfall.solver.train.Mesh;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Writes a train's counts and weight on one page of text. */
public final class SummaryExporter implements Exporter {
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
        return page.append(rating.feasible() ? "every demand is met\n" : "not every demand is met\n").toString();
    }
}
