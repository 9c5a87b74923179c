// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.brief;

import static drumfall.solver.quantity.Dimension.LENGTH;

import drumfall.solver.quantity.Quantity;
import drumfall.solver.sheet.Count;
import drumfall.solver.sheet.Entries;
import drumfall.solver.sheet.Measure;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.List;

/**
 * A train written down by a maker, to be rated.
 *
 * @param name what the maker calls it
 * @param meshes the meshes from the drum
 * @param meshesAbove how many of them lead from the drum arbor to the centre arbor; 0 if the drum turns hourly
 * @param drumDiameter diameter of the bare drum
 * @param falls falls of line that carry the weight
 * @param escapeTeeth teeth of the escape wheel, two beats a tooth
 */
public record TrainSheet(
        String name,
        @Entries(from = 1, to = 12) List<MeshEntry> meshes,
        @Count(from = 0, to = 11) int meshesAbove,

        @Measure(value = LENGTH, from = "1 mm", to = "1 m") Quantity drumDiameter,

        @Count(from = 1, to = 2) int falls,
        @Count(from = 2, to = 240) int escapeTeeth) {
    /** Copies the list. */
    public TrainSheet {
        meshes = List.copyOf(meshes);
    }

    /**
     * One mesh.
     *
     * @param wheel teeth of the wheel
     * @param leaves leaves of the pinion
     * @param module the module
     */
    public record MeshEntry(
            @Count(from = 2, to = 1000) int wheel,
            @Count(from = 2, to = 1000) int leaves,

            @Measure(value = LENGTH, from = "0.05 mm", to = "100 mm")
            Quantity module) {
        private Mesh mesh() {
            return Mesh.of(wheel, leaves, ToothModule.ofMetres(module.exact()));
        }

        private static MeshEntry of(Mesh mesh) {
            return new MeshEntry(mesh.toothCount(), mesh.leafCount(), Quantity.parse(LENGTH, mesh.module() + " mm"));
        }
    }

    /**
     * The sheet of a train.
     *
     * @param name what to call it
     * @param train the train
     */
    public static TrainSheet of(String name, Train train) {
        return new TrainSheet(
                name,
                train.meshes().stream().map(MeshEntry::of).toList(),
                train.meshesAbove(),
                Quantity.of(train.drumDiameter().multiply(1000), LENGTH.unit("mm")),
                train.reeving().falls(),
                train.escapeTeeth());
    }

    /**
     * The train that the sheet describes.
     *
     * @throws IllegalArgumentException if the sheet was built by hand and breaks a rule that {@link TrainReader} checks
     */
    public Train train() {
        return new Train(
                meshes.stream().map(MeshEntry::mesh).toList(),
                meshesAbove,
                drumDiameter.exact(),
                Reeving.of(falls).orElseThrow(),
                escapeTeeth);
    }
}
