// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.rules;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.BriefChoices;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.IntVar;

/** The unknowns of a train with a number of meshes above and below the centre. */
final class TrainVariables {
    final Model model;
    final int above;
    final int below;
    final IntVar[] wheel;
    final IntVar[] leaves;
    /** Number of the module in the brief's list, smallest first. */
    final IntVar[] module;
    /** Number of the drum diameter in the brief's list, smallest first. */
    final IntVar drum;

    final IntVar falls;
    final IntVar escape;
    final List<ToothModule> modules;
    final List<BigFraction> drums;

    TrainVariables(Model model, Brief brief, BriefChoices choices, int above, int below) {
        this.model = model;
        this.above = above;
        this.below = below;
        this.modules = choices.modules();
        this.drums = choices.drumDiameters();
        int count = above + below;
        Brief.Teeth teeth = brief.teeth();
        this.wheel = model.intVarArray(
                "wheel", count, teeth.wheelTeeth().from(), teeth.wheelTeeth().to(), false);
        this.leaves = model.intVarArray(
                "leaves", count, teeth.leaves().from(), teeth.leaves().to(), false);
        this.module = model.intVarArray("module", count, 0, modules.size() - 1, false);
        this.drum = model.intVar("drum", 0, drums.size() - 1, false);
        this.falls = model.intVar(
                "falls", choices.reevings().stream().mapToInt(Reeving::falls).toArray());
        this.escape = model.intVar(
                "escape wheel",
                choices.escapeTeeth().stream().mapToInt(Integer::intValue).toArray());
    }

    int meshes() {
        return above + below;
    }

    /** The three unknowns of a mesh. */
    IntVar[] mesh(int index) {
        return new IntVar[] {wheel[index], leaves[index], module[index]};
    }

    Mesh mesh(int toothCount, int leafCount, int moduleNumber) {
        return Mesh.of(toothCount, leafCount, modules.get(moduleNumber));
    }

    /** The unknowns of the meshes in a range and what stands at its end. */
    IntVar[] side(int from, int to, IntVar... end) {
        return Stream.concat(IntStream.range(from, to).mapToObj(this::mesh).flatMap(Stream::of), Stream.of(end))
                .toArray(IntVar[]::new);
    }

    /** Everything that makes a train. */
    IntVar[] all() {
        return side(0, meshes(), drum, falls, escape);
    }

    /** The train of fixed variables, given in the order of {@link #all}. */
    Train train(int[] values) {
        List<Mesh> meshes = new ArrayList<>();
        for (int i = 0; i < meshes(); i++) {
            meshes.add(mesh(values[3 * i], values[3 * i + 1], values[3 * i + 2]));
        }
        int end = 3 * meshes();
        return new Train(
                meshes,
                above,
                drums.get(values[end]),
                Reeving.of(values[end + 1]).orElseThrow(),
                values[end + 2]);
    }

    /** The train of the variables' present values. */
    Train train() {
        return train(Stream.of(all()).mapToInt(IntVar::getValue).toArray());
    }
}
