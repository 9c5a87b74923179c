// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.presenter;

import drumfall.solver.brief.BundledBriefs;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.teeth.MeshTeeth;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import drumfall.ui.work.LatestDesk;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** A train whose meshes are looked into; its counts are the scenario's own. */
public final class MeshTrains {
    private MeshTrains() {}

    /** Three meshes, all of which print. */
    public static Train train() {
        return of("1.25");
    }

    /** The same counts, the last mesh of a module at which no involute teeth print. */
    public static Train toothless() {
        return of("0.3");
    }

    private static Train of(String lastModule) {
        return new Train(
                List.of(mesh(85, 10, "1.5"), mesh(60, 8, "1.25"), mesh(64, 8, lastModule)),
                1,
                BigFraction.of(36, 1000),
                Reeving.DOUBLE,
                30);
    }

    /** A mesh of a module in mm. */
    public static Mesh mesh(int toothCount, int leafCount, String module) {
        return Mesh.of(toothCount, leafCount, ToothModule.ofMillimetres(module));
    }

    /** A traced mesh of the demonstration brief, as drawn but for its errors. */
    public static TracedMesh traced(Mesh mesh, double centreError, double thinning) {
        MeshTeeth teeth =
                new TrainRater(BundledBriefs.demo()).movement().teeth(mesh).orElseThrow();
        return TracedMesh.of(mesh, teeth, new MeshSetting(centreError, thinning, 0));
    }

    /** A sheet on the middle mesh of the train, traced; its desk ends with the program. */
    public static MeshSheet sheet(Turns turns, Workspace workspace) {
        workspace.choose(train());
        MeshSheet sheet = new MeshSheet(workspace, new LatestDesk(turns, "mesh"));
        turns.until(() -> sheet.state().traced().isPresent());
        return sheet;
    }
}
