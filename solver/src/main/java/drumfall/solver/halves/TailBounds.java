// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

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

    /** Stands for ratios without a limit. */
    private static final double LARGEST = 1e100;

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
     * @param below role of the arbor that such a mesh drives
     * @param above role of the arbor that carries its wheel
     * @param mostFelt what a mesh lets through at most when running
     * @param cancelled asked often; once true the bounds are cut short and good for nothing
     */
    TailBounds withInFront(
            HalfRules rules,
            List<MeshChoice> choices,
            ArborRole below,
            ArborRole above,
            ToDoubleFunction<MeshChoice> mostFelt,
            BooleanSupplier cancelled) {
        double longest =
                choices.stream().mapToDouble(choice -> choice.ratio).max().orElseThrow();
        TailBounds longer = new TailBounds(least.length + (int) Math.ceil(Math.log(longest) / WIDTH) + 3);
        int[] reached = IntStream.range(0, least.length)
                .filter(band -> Double.isFinite(least[band][FILAMENT]))
                .toArray();
        for (MeshChoice choice : choices) {
            if (cancelled.getAsBoolean()) {
                break;
            }
            Step step = new Step(rules, choice, below, above, mostFelt.applyAsDouble(choice));
            int shift = (int) Math.floor(Math.log(choice.ratio) / WIDTH);
            for (int band : reached) {
                // The logarithms of mesh and tail lie anywhere in their bands, so their sum lies in one of two.
                step.offer(least[band], longer.least[band + shift], longer.least[band + shift + 1]);
            }
        }
        return longer;
    }

    /**
     * The least of the tails of several bounds.
     *
     * @param all at least one
     */
    static TailBounds least(List<TailBounds> all) {
        TailBounds least = new TailBounds(
                all.stream().mapToInt(bounds -> bounds.least.length).max().orElseThrow());
        for (TailBounds bounds : all) {
            for (int band = 0; band < bounds.least.length; band++) {
                for (int figure = 0; figure < FIGURES; figure++) {
                    least.least[band][figure] = Math.min(least.least[band][figure], bounds.least[band][figure]);
                }
            }
        }
        return least;
    }

    /**
     * The least of every tail whose ratio lies in a range, with a torque behind it that is the same for all.
     *
     * @param from smallest ratio
     * @param to largest ratio
     * @return the lines of the torque at the first arbor by the torque behind the tail, and the parts; infinite if no tail
     *     reaches the range
     */
    Lines linesBetween(double from, double to) {
        int low = Math.max(0, band(from) - 1);
        int high = Math.min(least.length - 1, band(Math.min(to, LARGEST)) + 1);
        double[] all = new double[FIGURES];
        Arrays.fill(all, Double.POSITIVE_INFINITY);
        for (int band = low; band <= high; band++) {
            for (int figure = 0; figure < FIGURES; figure++) {
                all[figure] = Math.min(all[figure], least[band][figure]);
            }
        }
        return new Lines(
                all[RUNNING],
                all[RUNNING_SLOPE],
                all[BINDING],
                all[BINDING_SLOPE],
                all[FILAMENT],
                all[TIP],
                all[CENTRES]);
    }

    /**
     * The least of every tail whose ratio lies in a range.
     *
     * @param from smallest ratio
     * @param to largest ratio
     * @param escape gives the torque the escape wheel needs at a beat
     * @param turnsBefore turns an hour of the tail's first arbor
     * @param modules one bit for each module that every tail uses
     * @return the bound; infinite if no tail reaches the range
     */
    Least between(double from, double to, EscapeSide escape, double turnsBefore, long modules) {
        int low = Math.max(0, band(from) - 1);
        int high = Math.min(least.length - 1, band(to) + 1);
        return high - low > 2 * BLOCK
                ? leastOf(blocks(), low / BLOCK, high / BLOCK, WIDTH * BLOCK, escape, turnsBefore, modules)
                : leastOf(least, low, high, WIDTH, escape, turnsBefore, modules);
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
            double[][] bands, int low, int high, double width, EscapeSide escape, double turnsBefore, long modules) {
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
        return new Least(running, binding, new PartSums((long) filament, tip, (long) centres, modules));
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

        Step(HalfRules rules, MeshChoice choice, ArborRole below, ArborRole above, double mostFelt) {
            this.choice = choice;
            this.runningConstant = rules.step(Criterion.RUNNING, 0, below, choice, mostFelt, above);
            this.runningSlope = rules.step(Criterion.RUNNING, 1, below, choice, mostFelt, above) - runningConstant;
            double binding = choice.passedAtBest(Criterion.BINDING);
            this.bindingConstant = rules.step(Criterion.BINDING, 0, below, choice, binding, above);
            this.bindingSlope = rules.step(Criterion.BINDING, 1, below, choice, binding, above) - bindingConstant;
        }

        void offer(double[] tail, double[] target, double[] other) {
            take(target, other, RUNNING, runningConstant + runningSlope * tail[RUNNING]);
            take(target, other, RUNNING_SLOPE, runningSlope * tail[RUNNING_SLOPE]);
            take(target, other, BINDING, bindingConstant + bindingSlope * tail[BINDING]);
            take(target, other, BINDING_SLOPE, bindingSlope * tail[BINDING_SLOPE]);
            take(target, other, FILAMENT, tail[FILAMENT] + choice.filament);
            take(target, other, TIP, Math.max(tail[TIP], choice.tipRadius));
            take(target, other, CENTRES, tail[CENTRES] + choice.centreDistance);
        }

        private static void take(double[] target, double[] other, int figure, double value) {
            // A mesh that friction holds makes infinity less infinity, which is less than nothing: it bounds nothing
            // and is
            // left to the walk.
            if (value < target[figure]) {
                target[figure] = value;
            }
            if (value < other[figure]) {
                other[figure] = value;
            }
        }
    }

    /**
     * The least of a group of tails, each figure on its own.
     *
     * @param running torque at the tail's first arbor, N m
     * @param binding the same with every mesh at its worst
     * @param sums what the parts of such a tail add
     */
    record Least(double running, double binding, PartSums sums) {}

    /**
     * The least of a group of tails, each figure on its own, for any torque behind them.
     *
     * @param running torque at the first arbor if none were needed behind the tail, N m
     * @param runningSlope torque at the first arbor for each unit behind the tail
     * @param binding like {@code running} with every mesh at its worst
     * @param bindingSlope like {@code runningSlope} with every mesh at its worst
     * @param filament µg
     * @param tip tip radius of the largest wheel, m
     * @param centres sum of centre distances, half nanometres
     */
    record Lines(
            double running,
            double runningSlope,
            double binding,
            double bindingSlope,
            double filament,
            double tip,
            double centres) {
        boolean reached() {
            return Double.isFinite(filament);
        }
    }
}
