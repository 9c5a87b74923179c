// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.samples;

import drumfall.solver.brief.Brief;
import drumfall.solver.rating.BriefChoices;
import drumfall.solver.rating.TrainRater;
import drumfall.solver.train.Mesh;
import drumfall.solver.train.Reeving;
import drumfall.solver.train.ToothModule;
import drumfall.solver.train.Train;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;

/** Trains written in one line, and random trains of a brief's choices. */
public final class Trains {
    private Trains() {}

    /**
     * A train from the line that a train prints and its drum.
     *
     * @param line for example {@code 96/8 m1.5 | 64/8 m1 · 60/8 m1 · E30}
     * @param drumMillimetres diameter of the bare drum
     * @param falls falls of line
     */
    public static Train of(String line, String drumMillimetres, int falls) {
        int centre = line.indexOf('|');
        List<Mesh> above = meshes(line.substring(0, centre));
        List<Mesh> meshes = new ArrayList<>(above);
        meshes.addAll(meshes(line.substring(centre + 1)));
        int escape = Integer.parseInt(line.substring(line.indexOf('E') + 1).strip());
        return new Train(
                meshes,
                above.size(),
                millimetres(drumMillimetres),
                Reeving.of(falls).orElseThrow(),
                escape);
    }

    /** A length in metres from a decimal in millimetres. */
    public static BigFraction millimetres(String decimal) {
        return BigFraction.of(new BigDecimal(decimal).movePointRight(6).intValueExact(), 1_000_000_000);
    }

    /** Any train of the brief's choices, most of which miss some demand. */
    public static Train random(Brief brief, Random random) {
        BriefChoices choices = new TrainRater(brief).choices();
        int above = between(
                random, brief.train().above().from(), brief.train().above().to());
        int below = between(
                random, brief.train().below().from(), brief.train().below().to());
        List<Mesh> meshes = new ArrayList<>();
        for (int i = 0; i < above + below; i++) {
            meshes.add(Mesh.of(
                    between(
                            random,
                            brief.teeth().wheelTeeth().from(),
                            brief.teeth().wheelTeeth().to()),
                    between(
                            random,
                            brief.teeth().leaves().from(),
                            brief.teeth().leaves().to()),
                    any(random, choices.modules())));
        }
        return new Train(
                meshes,
                above,
                any(random, choices.drumDiameters()),
                any(random, choices.reevings()),
                any(random, choices.escapeTeeth()));
    }

    private static List<Mesh> meshes(String line) {
        return Arrays.stream(line.split("·"))
                .map(String::strip)
                .filter(mesh -> mesh.contains("/"))
                .map(mesh -> mesh.split("[/ m]+"))
                .map(mesh -> Mesh.of(
                        Integer.parseInt(mesh[0]), Integer.parseInt(mesh[1]), ToothModule.ofMillimetres(mesh[2])))
                .toList();
    }

    private static int between(Random random, int from, int to) {
        return from + random.nextInt(to - from + 1);
    }

    private static <T> T any(Random random, List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}
