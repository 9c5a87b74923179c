// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.plugin.api.ExportFolder;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.Exporter;
import drumfall.plugin.api.Handover;
import drumfall.solver.making.MovementPart;
import drumfall.solver.making.MovementParts;
import drumfall.solver.rating.TrainRater;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Writes an STL file for every printed part, a 3MF package of them all, and a list. */
public final class SolidsExporter implements Exporter {
    /** The package's share of the work. */
    private static final double PACKAGE = 0.2;

    private final SolidOptions options;

    /** Called by the service loader. */
    public SolidsExporter() {
        this(SolidOptions.FINE);
    }

    /**
     * An exporter that follows curves as closely as asked.
     *
     * @param options how finely solids are written
     */
    public SolidsExporter(SolidOptions options) {
        this.options = options;
    }

    @Override
    public String id() {
        return "solids";
    }

    @Override
    public String title() {
        return "Solids (STL and 3MF)";
    }

    @Override
    public void export(Handover handover, ExportFolder folder, ExportProgress progress) throws IOException {
        TrainRater rater = new TrainRater(handover.brief());
        List<MovementPart> parts =
                MovementParts.of(rater, handover.rating(), handover.layout()).parts();
        write(handover, parts, folder, progress);
    }

    /** Writes parts; stops early, leaving files out, if nobody wants them any more. */
    void write(Handover handover, List<MovementPart> parts, ExportFolder folder, ExportProgress progress)
            throws IOException {
        List<MeshedPart> meshed = new ArrayList<>();
        Manifest manifest = new Manifest();
        for (int i = 0; i < parts.size() && !progress.cancelled(); i++) {
            MovementPart part = parts.get(i);
            progress.at((1 - PACKAGE) * i / parts.size(), part.name() + ".stl");
            Mesh mesh = Mesh.of(part.solid(), options);
            byte[] stl = StlWriter.bytes(part.name(), mesh);
            try (OutputStream out = folder.create(part.name() + ".stl")) {
                out.write(stl);
            }
            manifest.add(part, stl);
            meshed.add(new MeshedPart(part, mesh));
        }
        if (!progress.cancelled()) {
            progress.at(1 - PACKAGE, "movement.3mf");
            writePackage(handover, meshed, folder);
            try (OutputStream out = folder.create("parts.csv")) {
                out.write(manifest.text().getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    private static void writePackage(Handover handover, List<MeshedPart> meshed, ExportFolder folder)
            throws IOException {
        double width = 1000 * handover.brief().printer().bedWidth().si();
        try (OutputStream out = new BufferedOutputStream(folder.create("movement.3mf"))) {
            PackageWriter.write(handover.rating().train().toString(), meshed, width, out);
        }
    }
}
