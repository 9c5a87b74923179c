// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.plugin.solids;

import drumfall.plugin.api.ExportFolder;
import drumfall.plugin.api.ExportProgress;
import drumfall.plugin.api.ExportSetting;
import drumfall.plugin.api.Exporter;
import drumfall.plugin.api.Handover;
import drumfall.plugin.api.RefusedExportException;
import drumfall.solver.fit.FitException;
import drumfall.solver.making.MovementPart;
import drumfall.solver.making.MovementParts;
import drumfall.solver.making.solid.SizeLimitException;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.rating.TrainRater;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Writes an STL file for every printed part, a 3MF package of them all, or either, and a list. */
public final class SolidsExporter implements Exporter {
    /** The package's share of the work. */
    private static final double PACKAGE = 0.2;

    private static final String STL = "stl";
    private static final String THREE_MF = "3mf";

    /** Greatest distance of a chord from an arc. */
    static final ExportSetting.Length CHORD_ERROR = new ExportSetting.Length(
            "chord-error",
            "Chord error",
            "How far a flat may lie off the curve that it stands for: less gives smoother parts and larger files.",
            Quantity.ofMillimetres(SolidOptions.FINE.chordError()),
            Quantity.ofMillimetres(SolidOptions.LEAST),
            Quantity.ofMillimetres(SolidOptions.MOST));

    /** Which kinds of file. */
    static final ExportSetting.Choice FILES = new ExportSetting.Choice(
            "files",
            "Files",
            "Which files are written beside the list of parts.",
            "both",
            List.of(
                    new ExportSetting.Choice.Value("both", "STL and 3MF"),
                    new ExportSetting.Choice.Value(STL, "An STL file for each part"),
                    new ExportSetting.Choice.Value(THREE_MF, "One 3MF package")));

    /** Called by the service loader. */
    public SolidsExporter() {}

    @Override
    public String id() {
        return "solids";
    }

    @Override
    public String title() {
        return "Solids (STL and 3MF)";
    }

    @Override
    public List<ExportSetting<?>> settings() {
        return List.of(CHORD_ERROR, FILES);
    }

    @Override
    public void export(Handover handover, ExportFolder folder, ExportProgress progress) throws IOException {
        TrainRater rater = new TrainRater(handover.brief());
        write(handover, parts(rater, handover), folder, progress);
    }

    private static List<MovementPart> parts(TrainRater rater, Handover handover) {
        try {
            return MovementParts.of(rater, handover.rating(), handover.layout()).parts();
        } catch (FitException | SizeLimitException refused) {
            throw new RefusedExportException(refused.getMessage());
        }
    }

    /** Writes parts; stops early, leaving files out, if nobody wants them any more. */
    void write(Handover handover, List<MovementPart> parts, ExportFolder folder, ExportProgress progress)
            throws IOException {
        SolidOptions options =
                new SolidOptions(handover.settings().of(CHORD_ERROR).in("mm"));
        String files = handover.settings().of(FILES);
        List<MeshedPart> meshed = new ArrayList<>();
        Manifest manifest = new Manifest();
        try (MeshWorkers workers = new MeshWorkers(parts, options)) {
            for (int i = 0; i < parts.size() && !progress.cancelled(); i++) {
                MovementPart part = parts.get(i);
                progress.at((1 - PACKAGE) * i / parts.size(), part.name() + ".stl");
                Mesh mesh = workers.mesh(i);
                byte[] stl = StlWriter.bytes(part.name(), mesh);
                if (!files.equals(THREE_MF)) {
                    try (OutputStream out = folder.create(part.name() + ".stl")) {
                        out.write(stl);
                    }
                }
                manifest.add(part, stl);
                meshed.add(new MeshedPart(part, mesh));
            }
        }
        if (!progress.cancelled()) {
            progress.at(1 - PACKAGE, "movement.3mf");
            if (!files.equals(STL)) {
                writePackage(handover, meshed, folder);
            }
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
