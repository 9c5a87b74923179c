// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * The least that any tail of a lower half can need, by what it still has to multiply the speed.
 *
 * <p>A tail is the last meshes of a lower half, down to the escape wheel. The torque at its first arbor is a rising line of
 * the torque the escape wheel needs. Tails are sorted into narrow bands of the logarithm of their ratio; each band knows
 * the smallest constant and slope of these lines, filament, tip and centre distance of any tail in it, each on its own and
 * with every mesh passing on its most. Meshes before a tail cannot need less than above the best tail of the bands in
 * reach, each band with the beat it leads to.
 */
final class TailBounds {
    /** A band is a fifth of a percent wide: narrower than any beat range worth asking for. */
    private static final double WIDTH = 0.002;

    private static final int RUNNING = 0;
    private static final int RUNNING_SLOPE = 1;
    private static final int BINDING = 2;
    private static final int BINDING_SLOPE = 3;
    private static final int FILAMENT = 4;
    private static final int TIP = 5;
    private static final int CENTRES = 6;
    private static final int FIGURES = 7;

    /** The tail without a mesh has ratio 1, whose logarithm may fall into either neighbour by rounding. */
    private static final int FIRST_BAND = -1;

    private static final int BLOCK = 24;

    private final double[][] least;
    private volatile double[][] blocks;

    private TailBounds(int bands) {
        this.least = new double[bands][FIGURES];
        for (double[] band : least) {
            Arrays.fill(band, Double.POSITIVE_INFINITY);
        }
    }

    /**
     * The tail without a mesh.
     *
     * @param runningConstant torque on the escape arbor if the escape wheel needed none, N m
     * @param runningSlope torque on the escape arbor for each unit at the escape wheel
     * @param bindingConstant the same for binding
     * @param bindingSlope the same for binding
     */
    static TailBounds none(double runningConstant, double runningSlope, double bindingConstant, double bindingSlope) {
        TailBounds none = new TailBounds(3);
        for (double[] band : none.least) {
            band[RUNNING] = runningConstant;
            band[RUNNING_SLOPE] = runningSlope;
            band[BINDING] = bindingConstant;
            band[BINDING_SLOPE] = bindingSlope;
            band[FILAMENT] = 0;
            band[TIP] = 0;
            band[CENTRES] = 0;
        }
        return none;
    }

    /**
     * Tails one mesh longer.
     *
     * @param rules steps of the walk
     * @param choices what may stand in front, at least one
     * @param last whether the mesh put in front is the last before the escape arbor
     * @param cancelled asked often; once true the bounds are cut short and good for nothing
     */
    TailBounds withInFront(HalfRules rules, List<MeshChoice> choices, boolean last, BooleanSupplier cancelled) {
        double longest =
                choices.stream().mapToDouble(choice -> choice.ratio).max().orElseThrow();
        TailBounds longer = new TailBounds(least.length + (int) Math.ceil(Math.log(longest) / WIDTH) + 3);
        ArborRole below = last ? ArborRole.ESCAPE : ArborRole.INTERMEDIATE;
        for (MeshChoice choice : choices) {
            if (cancelled.getAsBoolean()) {
                break;
            }
            Step step = new Step(rules, choice, below);
            int shift = (int) Math.floor(Math.log(choice.ratio) / WIDTH);
            for (int band = 0; band < least.length; band++) {
                if (Double.isFinite(least[band][FILAMENT])) {
                    // The logarithms of mesh and tail lie anywhere in their bands, so their sum lies in one of two.
                    step.offer(least[band], longer.least[band + shift]);
                    step.offer(least[band], longer.least[band + shift + 1]);
                }
            }
        }
        return longer;
    }

    /**
     * The least of every tail whose ratio lies in a range.
     *
     * @param from smallest ratio
     * @param to largest ratio
     * @param escape gives the torque the escape wheel needs at a beat
     * @param turnsBefore turns an hour of the tail's first arbor
     * @return the bound; infinite if no tail reaches the range
     */
    Least between(double from, double to, EscapeSide escape, double turnsBefore) {
        int low = Math.max(0, band(from) - 1);
        int high = Math.min(least.length - 1, band(to) + 1);
        return high - low > 2 * BLOCK
                ? leastOf(blocks(), low / BLOCK, high / BLOCK, WIDTH * BLOCK, escape, turnsBefore)
                : leastOf(least, low, high, WIDTH, escape, turnsBefore);
    }

    /** Bands put together by the dozen, for ranges too wide to go through band by band. */
    private double[][] blocks() {
        if (blocks == null) {
            double[][] wide = new TailBounds(least.length / BLOCK + 1).least;
            for (int i = 0; i < least.length; i++) {
                for (int figure = 0; figure < FIGURES; figure++) {
                    wide[i / BLOCK][figure] = Math.min(wide[i / BLOCK][figure], least[i][figure]);
                }
            }
            blocks = wide;
        }
        return blocks;
    }

    private static Least leastOf(
            double[][] bands, int low, int high, double width, EscapeSide escape, double turnsBefore) {
        double growth = Math.exp(width);
        double fastest = turnsBefore * Math.exp(WIDTH * FIRST_BAND + width * (low + 1));
        double running = Double.POSITIVE_INFINITY;
        double binding = Double.POSITIVE_INFINITY;
        double filament = Double.POSITIVE_INFINITY;
        double tip = Double.POSITIVE_INFINITY;
        double centres = Double.POSITIVE_INFINITY;
        for (int i = low; i <= high; i++) {
            double[] band = bands[i];
            double torque = escape.leastTorque(fastest);
            running = Math.min(running, band[RUNNING] + band[RUNNING_SLOPE] * torque);
            binding = Math.min(binding, band[BINDING] + band[BINDING_SLOPE] * torque);
            filament = Math.min(filament, band[FILAMENT]);
            tip = Math.min(tip, band[TIP]);
            centres = Math.min(centres, band[CENTRES]);
            fastest *= growth;
        }
        return new Least(running, binding, filament, tip, centres);
    }

    private static int band(double ratio) {
        return (int) Math.floor(Math.log(ratio) / WIDTH) - FIRST_BAND;
    }

    /** A mesh put in front of tails: the line of its step, and its parts. */
    private static final class Step {
        private final MeshChoice choice;
        private final double runningConstant;
        private final double runningSlope;
        private final double bindingConstant;
        private final double bindingSlope;

        Step(HalfRules rules, MeshChoice choice, ArborRole below) {
            this.choice = choice;
            this.runningConstant = step(rules, Criterion.RUNNING, 0, below);
            this.runningSlope = step(rules, Criterion.RUNNING, 1, below) - runningConstant;
            this.bindingConstant = step(rules, Criterion.BINDING, 0, below);
            this.bindingSlope = step(rules, Criterion.BINDING, 1, below) - bindingConstant;
        }

        private double step(HalfRules rules, Criterion criterion, double load, ArborRole below) {
            double passed = choice.passedAtBest(criterion);
            return rules.step(criterion, load, below, choice, passed, ArborRole.INTERMEDIATE);
        }

        void offer(double[] tail, double[] target) {
            take(target, RUNNING, runningConstant + runningSlope * tail[RUNNING]);
            take(target, RUNNING_SLOPE, runningSlope * tail[RUNNING_SLOPE]);
            take(target, BINDING, bindingConstant + bindingSlope * tail[BINDING]);
            take(target, BINDING_SLOPE, bindingSlope * tail[BINDING_SLOPE]);
            take(target, FILAMENT, tail[FILAMENT] + choice.filament);
            take(target, TIP, Math.max(tail[TIP], choice.tipRadius));
            take(target, CENTRES, tail[CENTRES] + choice.centreDistance);
        }

        private static void take(double[] target, int figure, double value) {
            // A mesh that friction holds makes infinity less infinity; it bounds nothing and is left to the walk.
            target[figure] = Math.min(target[figure], Double.isNaN(value) ? Double.POSITIVE_INFINITY : value);
        }
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
