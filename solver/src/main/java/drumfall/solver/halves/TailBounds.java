// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import java.util.Arrays;
import java.util.List;

/**
 * The least that any tail of a lower half can need, by what it still has to multiply the speed.
 *
 * <p>A tail is the last meshes of a lower half, down to the escape wheel. Tails are sorted into narrow bands of the
 * logarithm of their ratio; each band knows the smallest torque, filament, tip and centre distance of any tail in it, each
 * on its own and with every mesh passing on its most. A lower half that starts with given meshes cannot need less than
 * these meshes above the best tail of the bands in reach.
 */
final class TailBounds {
    /** A band is a fifth of a percent wide: narrower than any beat range worth asking for. */
    private static final double WIDTH = 0.002;

    private static final int RUNNING = 0;
    private static final int BINDING = 1;
    private static final int FILAMENT = 2;
    private static final int TIP = 3;
    private static final int CENTRES = 4;
    private static final int FIGURES = 5;

    private final int firstBand;
    private final double[][] least;

    private TailBounds(int firstBand, int bands) {
        this.firstBand = firstBand;
        this.least = new double[FIGURES][bands];
        for (double[] figure : least) {
            Arrays.fill(figure, Double.POSITIVE_INFINITY);
        }
    }

    /** The tail without a mesh: the escape arbor's own load, for ratio 1. */
    static TailBounds none(double runningLoad, double bindingLoad) {
        TailBounds none = new TailBounds(-1, 3);
        for (int band = 0; band < 3; band++) {
            none.least[RUNNING][band] = runningLoad;
            none.least[BINDING][band] = bindingLoad;
            none.least[FILAMENT][band] = 0;
            none.least[TIP][band] = 0;
            none.least[CENTRES][band] = 0;
        }
        return none;
    }

    /**
     * Tails one mesh longer.
     *
     * @param rules steps of the walk
     * @param choices what may stand in front
     * @param last whether the mesh put in front is the last before the escape arbor
     */
    TailBounds withInFront(HalfRules rules, List<MeshChoice> choices, boolean last) {
        double longest = Math.log(choices.get(choices.size() - 1).ratio);
        int bands = least[0].length + (int) Math.ceil(longest / WIDTH) + 3;
        TailBounds longer = new TailBounds(firstBand, bands);
        ArborRole below = last ? ArborRole.ESCAPE : ArborRole.INTERMEDIATE;
        for (MeshChoice choice : choices) {
            int shift = (int) Math.floor(Math.log(choice.ratio) / WIDTH);
            for (int band = 0; band < least[0].length; band++) {
                if (Double.isFinite(least[RUNNING][band])) {
                    longer.offer(rules, this, band, choice, below, shift);
                }
            }
        }
        return longer;
    }

    private void offer(HalfRules rules, TailBounds tails, int band, MeshChoice choice, ArborRole below, int shift) {
        double running = rules.step(
                Criterion.RUNNING, tails.least[RUNNING][band], below, choice, choice.bestFelt, ArborRole.INTERMEDIATE);
        double binding = rules.step(
                Criterion.BINDING, tails.least[BINDING][band], below, choice, choice.binding, ArborRole.INTERMEDIATE);
        double filament = tails.least[FILAMENT][band] + choice.wheelMass + choice.pinionMass;
        double tip = Math.max(tails.least[TIP][band], choice.tipRadius);
        double centres = tails.least[CENTRES][band] + choice.centreDistance;
        // The logarithms of mesh and tail lie anywhere in their bands, so their sum lies in one of two.
        for (int target = band + shift; target <= band + shift + 1; target++) {
            take(RUNNING, target, running);
            take(BINDING, target, binding);
            take(FILAMENT, target, filament);
            take(TIP, target, tip);
            take(CENTRES, target, centres);
        }
    }

    private void take(int figure, int band, double value) {
        least[figure][band] = Math.min(least[figure][band], value);
    }

    /**
     * The least of every tail whose ratio lies in a range.
     *
     * @param from smallest ratio
     * @param to largest ratio
     * @return the bound, empty-handed (infinite) if no tail reaches the range
     */
    Least between(double from, double to) {
        int low = Math.max(0, band(from) - 1);
        int high = Math.min(least[0].length - 1, band(to) + 1);
        double[] found = new double[FIGURES];
        for (int figure = 0; figure < FIGURES; figure++) {
            double smallest = Double.POSITIVE_INFINITY;
            for (int band = low; band <= high; band++) {
                smallest = Math.min(smallest, least[figure][band]);
            }
            found[figure] = smallest;
        }
        return new Least(found[RUNNING], found[BINDING], found[FILAMENT], found[TIP], found[CENTRES]);
    }

    private int band(double ratio) {
        return (int) Math.floor(Math.log(ratio) / WIDTH) - firstBand;
    }

    /**
     * The least of a group of tails, each figure on its own.
     *
     * @param running torque at the tail's first arbor, N m
     * @param binding the same with every mesh at its worst
     * @param filament µg
     * @param tip tip radius of the largest wheel, m
     * @param centres sum of centre distances, half nanometres
     */
    record Least(double running, double binding, double filament, double tip, double centres) {
        /** What the parts of such a tail add at least; its modules are unknown. */
        PartSums sums() {
            return new PartSums((long) filament, tip, (long) centres, 0);
        }
    }
}
