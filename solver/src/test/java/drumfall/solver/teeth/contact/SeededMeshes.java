// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.teeth.contact;

import drumfall.solver.teeth.form.BasicRack;
import drumfall.solver.teeth.form.CycloidalPair;
import drumfall.solver.teeth.form.InvolutePair;
import drumfall.solver.teeth.form.LanternPair;
import drumfall.solver.teeth.form.LeafTop;
import drumfall.solver.teeth.form.MeshPair;
import drumfall.solver.teeth.form.WheelTop;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** Seeded pairs of every form, each at a centre distance that is off. */
public final class SeededMeshes {
    private static final List<LeafTop> TOPS = List.of(LeafTop.ROUND, LeafTop.SEMI_OGIVE, LeafTop.OGIVE);

    private SeededMeshes() {}

    /** One pair with its conditions. */
    public record Case(MeshPair pair, MeshConditions conditions) {}

    /** So many cases, forms in turn; the second figure when the thorough run asks. */
    public static Stream<Case> of(int usual, int thorough) {
        int count = "full".equals(System.getProperty("drumfall.samples")) ? thorough : usual;
        Random random = new Random(20260101);
        List<Case> cases = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int teeth = 36 + random.nextInt(85);
            int leaves = 6 + random.nextInt(11);
            double error = (random.nextDouble() - 0.3) * 0.2;
            cases.add(new Case(pair(i % 5, teeth, leaves, random), MeshConditions.centreOff(error)));
        }
        return cases.stream();
    }

    private static MeshPair pair(int form, int teeth, int leaves, Random random) {
        LeafTop top = TOPS.get(random.nextInt(3));
        // Below the undercut limit by a tenth, so that real trochoids take part; six leaves would be pointed.
        double shift = Math.min(0.45, Math.max(0.1, 1 - leaves * 0.0585) * 0.9);
        return switch (form) {
            case 0 ->
                InvolutePair.of(BasicRack.ISO_53_A, teeth, Math.max(7, leaves), -shift, shift)
                        .mesh();
            case 1 -> CycloidalPair.of(teeth, leaves, WheelTop.EPICYCLOID, top).wheelDriving();
            case 2 -> CycloidalPair.of(teeth, leaves, WheelTop.SINGLE_ARC, top).wheelDriving();
            case 3 ->
                LanternPair.of(teeth, leaves, 0.9 + 0.3 * random.nextDouble(), 1.02, 0.1)
                        .mesh();
            default -> CycloidalPair.of(teeth, leaves, WheelTop.EPICYCLOID, top).pinionDriving();
        };
    }
}
