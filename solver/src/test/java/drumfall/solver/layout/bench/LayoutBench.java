// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.layout.bench;

import drumfall.solver.layout.Layout;
import drumfall.solver.layout.LayoutNeed;
import drumfall.solver.layout.LayoutOutcome;
import drumfall.solver.layout.Movements;
import drumfall.solver.layout.Preference;
import drumfall.solver.layout.Wish;
import drumfall.solver.layout.check.LayoutCheck;
import drumfall.solver.layout.place.Placer;
import drumfall.solver.layout.size.Envelope;
import drumfall.solver.layout.size.MeshSpacing;
import drumfall.solver.layout.size.MovementParts;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Measures how long a movement takes to be placed or refused; a main to run by hand, never asserted. */
public final class LayoutBench {
    private static final int ROUNDS = 5;
    private static final long GIVE_UP = 60_000_000_000L;

    private LayoutBench() {}

    /** Prints the time of the first and of the last round for each movement and frame. */
    public static void main(String[] arguments) {
        MovementParts four = Movements.eightDay();
        report("roomy", Movements.need(four, Movements.frame(300, 420, 130), 48));
        report("narrow", Movements.need(four, Movements.frame(160, 420, 130), 48));
        report("low", Movements.need(four, Movements.frame(220, 200, 130), 48));
        report("lower", Movements.need(four, Movements.frame(220, 180, 130), 48));
        report("tight", Movements.need(four, Movements.frame(160, 240, 110), 48));
        report("too tight", Movements.need(four, Movements.frame(150, 200, 100), 48));
        report("too small", Movements.need(four, Movements.frame(130, 170, 100), 48));
        report("too flat", Movements.need(four, Movements.frame(300, 420, 70), 48));
        report("pillars", Movements.need(four, Movements.pillaredFrame(200, 320, 130), 48));
        report("pillars, tight", Movements.need(four, Movements.pillaredFrame(160, 240, 110), 48));
        for (Wish wish : Wish.values()) {
            Envelope envelope = Movements.frame(220, 320, 130);
            report("best " + wish, Movements.need(four, envelope, 48).with(Preference.inOrder(wish)));
        }
        more();
    }

    private static void more() {
        for (int meshes = 5; meshes <= 6; meshes++) {
            MeshSpacing light = Movements.mesh(70, 8, 1000);
            List<MeshSpacing> spacings = new ArrayList<>(Movements.eightDay().meshes());
            while (spacings.size() < meshes) {
                spacings.add(2, light);
            }
            MovementParts parts = Movements.parts(2, spacings, true);
            report(meshes + " meshes", Movements.need(parts, Movements.frame(220, 360, 150), 48));
        }
    }

    private static void report(String name, LayoutNeed need) {
        double first = 0;
        double last = 0;
        LayoutOutcome outcome = null;
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            outcome = Placer.place(need, () -> System.nanoTime() - start > GIVE_UP);
            last = (System.nanoTime() - start) / 1e6;
            first = round == 0 ? last : first;
            if (last > 2_000) {
                break;
            }
        }
        System.out.printf(Locale.ROOT, "%-16s first %9.2f ms  last %9.2f ms  %s%n", name, first, last, words(outcome));
    }

    private static String words(LayoutOutcome outcome) {
        if (outcome instanceof LayoutOutcome.Placed placed) {
            Layout layout = placed.layout();
            return placed.merit() + " " + layout.extent().width() / 1_000 + " x "
                    + layout.extent().height() / 1_000 + " x " + layout.depth() / 1_000 + " um, faults "
                    + LayoutCheck.faults(layout);
        }
        return outcome.toString();
    }
}
