// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.halves;

import drumfall.solver.power.ArborRole;
import drumfall.solver.power.Criterion;
import java.util.List;

/**
 * Weight at the drum as a rising line of the torque at the centre, for a few memories of the pendulum.
 *
 * <p>The walk through the meshes above the centre is a chain of steps {@code X -> a + b X} with {@code a, b >= 0}; only
 * what the meshes let through when running depends on the memory, and it rises with it. Between two neighbouring
 * memories the true line lies between their two lines.
 */
final class UpperLines {
    /** Place of the binding line's constant in an array of lines; its slope follows. */
    static final int BINDING = 0;

    /** Place of the constant of the running line for the longest memory, which no other undercuts; its slope follows. */
    static final int RUNNING = 2;

    /** Few enough to be quick, enough to keep neighbouring lines within a thousandth of each other. */
    private static final int MOST_BANDS = 4;

    /** A twentieth more memory lets hardly more through; bands need not be narrower. */
    private static final double BAND_WIDTH = 0.05;

    /** Bounds are computed by other operations than figures; this is far above their rounding and far below any cell. */
    private static final double ROUNDING = 1e-12;

    private final HalfRules rules;
    private final int bands;
    /** Edges of the bands, s, longest first. */
    private final double[] memories;

    private final double leastLoad;
    private final double mostLoad;
    private final double mostBinding;
    private final double bindingOverRunning;

    /**
     * Lines for joining with given lower halves.
     *
     * @param rules what both halves share
     * @param lower the lower halves, at least one
     */
    UpperLines(HalfRules rules, List<LowerHalf> lower) {
        this.rules = rules;
        double shortest =
                lower.stream().mapToDouble(half -> half.need.memory()).min().orElseThrow();
        double longest =
                lower.stream().mapToDouble(half -> half.need.memory()).max().orElseThrow();
        double width = Math.log(longest / shortest);
        this.bands = (int) Math.max(1, Math.min(MOST_BANDS, Math.ceil(width / BAND_WIDTH)));
        this.memories = new double[bands + 1];
        for (int i = 0; i < bands; i++) {
            memories[i] = longest * Math.exp(-width * i / bands);
        }
        memories[bands] = shortest;
        this.leastLoad =
                lower.stream().mapToDouble(half -> half.runningLoad).min().orElseThrow();
        this.mostLoad =
                lower.stream().mapToDouble(half -> half.runningLoad).max().orElseThrow();
        this.mostBinding =
                lower.stream().mapToDouble(half -> half.bindingLoad).max().orElseThrow();
        this.bindingOverRunning = lower.stream()
                .mapToDouble(half -> half.bindingLoad / half.runningLoad)
                .max()
                .orElseThrow();
    }

    /**
     * Lines of the torque on the drum arbor.
     *
     * @param meshes the meshes from the drum
     * @return constant and slope for binding, then for each memory, longest first
     */
    double[] atDrumArbor(List<MeshChoice> meshes) {
        double[] lines = new double[2 * (memories.length + 1)];
        for (int line = 0; line < lines.length; line += 2) {
            boolean running = line != BINDING;
            Criterion criterion = running ? Criterion.RUNNING : Criterion.BINDING;
            double memory = running ? memories[(line - RUNNING) / 2] : 0;
            double constant = 0;
            double slope = 1;
            double hours = 1;
            for (int index = meshes.size() - 1; index >= 0; index--) {
                MeshChoice choice = meshes.get(index);
                hours *= choice.ratio;
                double passed = choice.passed(criterion, memory * choice.teeth / (3600 * hours));
                ArborRole below = HalfJoin.role(index + 1, meshes.size());
                ArborRole above = HalfJoin.role(index, meshes.size());
                double empty = rules.step(criterion, 0, below, choice, passed, above);
                double gain = rules.step(criterion, 1, below, choice, passed, above) - empty;
                constant = empty + gain * constant;
                slope *= gain;
            }
            lines[line] = constant;
            lines[line + 1] = slope;
        }
        return lines;
    }

    /** The most that a mesh lets through when running, wherever above the centre it stands. */
    double mostFelt(MeshChoice choice) {
        // No arbor above the centre turns quicker than its own mesh makes it, with the centre pinion an hour a turn.
        return choice.felt.felt(memories[0] * choice.leaves / 3600);
    }

    /**
     * Lines that no memory undercuts, quick to compute.
     *
     * @param meshes the meshes from the drum
     * @param mostFelt what each lets through at most when running
     * @return like {@link #atDrumArbor}
     */
    double[] leastAtDrumArbor(List<MeshChoice> meshes, double[] mostFelt) {
        return least(meshes, mostFelt, meshes.size(), 0, 1);
    }

    /**
     * Lines that no memory undercuts, of meshes before a last one that is known by its least step only.
     *
     * @param meshes the meshes from the drum less the last one
     * @param mostFelt what each lets through at most when running
     * @param constant torque on the arbor before the centre if the centre needed none, or less, N m
     * @param slope torque on that arbor for each unit at the centre, or less
     * @return like {@link #atDrumArbor}
     */
    double[] leastAtDrumArbor(List<MeshChoice> meshes, double[] mostFelt, double constant, double slope) {
        return least(meshes, mostFelt, meshes.size() + 1, constant, slope);
    }

    private double[] least(List<MeshChoice> meshes, double[] mostFelt, int count, double constant0, double slope0) {
        double[] lines = new double[2 * (memories.length + 1)];
        double constant = constant0;
        double slope = slope0;
        for (int index = meshes.size() - 1; index >= 0; index--) {
            MeshChoice choice = meshes.get(index);
            ArborRole below = HalfJoin.role(index + 1, count);
            ArborRole above = HalfJoin.role(index, count);
            double empty = rules.step(Criterion.RUNNING, 0, below, choice, mostFelt[index], above);
            double one = rules.step(Criterion.RUNNING, 1, below, choice, mostFelt[index], above);
            constant = empty + (one - empty) * constant;
            slope *= one - empty;
        }
        for (int line = RUNNING; line < lines.length; line += 2) {
            lines[line] = constant;
            lines[line + 1] = slope;
        }
        return lines;
    }

    /**
     * The weight lines of a drum behind the meshes.
     *
     * @param atDrumArbor lines of the torque on the drum arbor
     * @param drum the drum's line
     * @return constant and slope for binding, then for each memory, kg and kg/(N m)
     */
    static double[] atLine(double[] atDrumArbor, DrumLine drum) {
        double[] lines = new double[atDrumArbor.length];
        for (int line = 0; line < lines.length; line += 2) {
            boolean running = line != BINDING;
            double slope = running ? drum.runningSlope() : drum.bindingSlope();
            lines[line] = (running ? drum.running() : drum.binding()) + slope * atDrumArbor[line];
            lines[line + 1] = slope * atDrumArbor[line + 1];
        }
        return lines;
    }

    /** Whether no lower half makes these lines infinite. */
    boolean finite(double[] lines) {
        for (double figure : lines) {
            if (!Double.isFinite(figure)) {
                return false;
            }
        }
        return true;
    }

    /** A weight that these lines make with no lower half less than, kg. */
    double leastWeight(double[] lines) {
        return at(lines, RUNNING, leastLoad) * (1 - ROUNDING);
    }

    /** The least weight of a point that asks, kg: the band of the longest memory, at the least torque. */
    static double leastOf(double[] asked) {
        return asked[0];
    }

    /** Number of attributes that {@link #write} writes. */
    int attributes() {
        return 2 * bands + 1;
    }

    /**
     * Writes what lines weigh at both ends of the torque's range, band by band: at the shorter memory of each band for a
     * half that may replace another, at the longer for one that may be replaced; then the heaviest that binding makes, or
     * nothing if binding never decides.
     */
    void write(double[] lines, boolean offered, double[] point) {
        double rounding = offered ? 1 : 1 - ROUNDING;
        for (int band = 0; band < bands; band++) {
            int line = RUNNING + 2 * (offered ? band + 1 : band);
            point[2 * band] = at(lines, line, leastLoad) * rounding;
            point[2 * band + 1] = at(lines, line, mostLoad) * rounding;
        }
        if (offered) {
            point[2 * bands] = bindingDecides(lines) ? at(lines, BINDING, mostBinding) : 0;
        } else {
            point[2 * bands] = leastWeight(lines);
        }
    }

    private boolean bindingDecides(double[] lines) {
        return at(lines, BINDING, bindingOverRunning * leastLoad) > at(lines, RUNNING, leastLoad)
                || at(lines, BINDING, bindingOverRunning * mostLoad) > at(lines, RUNNING, mostLoad);
    }

    /** Whether a half surely makes a smaller weight, so that ties need not be settled by counts. */
    boolean surelyLess(double[] point, double[] asked) {
        for (int i = 0; i < attributes(); i++) {
            if (point[i] > 0 && !HalfRules.surelyLess(point[i], asked[i])) {
                return false;
            }
        }
        return true;
    }

    private static double at(double[] lines, int line, double load) {
        return lines[line] + lines[line + 1] * load;
    }
}
