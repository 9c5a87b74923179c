// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.ui.terminal;

import drumfall.solver.quantity.Dimension;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.teeth.MeshTeeth;
import drumfall.solver.teeth.choice.ToothFamily;
import drumfall.solver.teeth.form.CycloidalPinion;
import drumfall.solver.teeth.form.InvoluteGear;
import drumfall.solver.teeth.form.LanternPinion;
import drumfall.solver.train.ToothModule;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** Holds what is asked of a mesh against what there is, and names the nearest that works. */
final class MeshBounds {
    private static final int MOST_TEETH = 300;
    private static final int MOST_LEAVES = 60;

    /** Modules are looked for in steps of a twentieth of a millimetre, up to the largest a brief may name. */
    private static final int MODULE_STEP = 50_000;

    private static final int LARGEST_MODULE = 20_000_000;

    /** Pressure angles are looked for in half degrees. */
    private static final int ANGLE_STEPS = 2;

    private static final int HUNDREDTHS = 100;

    private static final int LEAST_ANGLE = 12;
    private static final int MOST_ANGLE = 34;

    private final MeshWish wish;

    private MeshBounds(MeshWish wish) {
        this.wish = wish;
    }

    /** The teeth asked for; refused with the limit and the nearest value that works if there are none. */
    static MeshTeeth teeth(MeshWish wish) {
        MeshBounds bounds = new MeshBounds(wish);
        bounds.check();
        return wish.teeth().orElseThrow(bounds::nearest);
    }

    private void check() {
        count("leaves." + wish.family(), wish.leafCount(), fewest(), MOST_LEAVES);
        count("teeth", wish.toothCount(), wish.leafCount(), MOST_TEETH);
        wish.pressureAngle().ifPresent(this::angle);
        span("friction", wish.friction(), Quantity.parse(Dimension.NUMBER, "0"), Quantity.parse(Dimension.NUMBER, "1"));
        span("thinning", wish.thinning(), length("0 mm"), length("2 mm"));
        within("centreError", wish.centreError(), length("0 mm"), length("2 mm"));
        within("nozzle", wish.nozzle(), length("0.05 mm"), length("5 mm"));
    }

    private int fewest() {
        return switch (wish.family()) {
            case INVOLUTE -> InvoluteGear.FEWEST;
            case CYCLOIDAL -> CycloidalPinion.FEWEST;
            case LANTERN -> LanternPinion.FEWEST;
        };
    }

    private static void count(String subject, int count, int fewest, int most) {
        if (count < fewest || count > most) {
            throw RefusedInput.of("mesh." + subject, count, fewest, most, Math.max(fewest, Math.min(most, count)));
        }
    }

    private void angle(Quantity angle) {
        if (wish.family() != ToothFamily.INVOLUTE) {
            throw RefusedInput.of("mesh.angleless", angle.text(), JsonOutput.word(wish.family()));
        }
        within("angle", angle, degrees(LEAST_ANGLE), degrees(MOST_ANGLE));
    }

    private static void span(String subject, QuantitySpan span, Quantity least, Quantity most) {
        within(subject, span.low(), least, most);
        within(subject, span.high(), least, most);
        if (span.low().compareTo(span.high()) > 0) {
            throw RefusedInput.of(
                    "mesh.order",
                    Phrases.phrase("mesh." + subject),
                    span.low().text(),
                    span.high().text());
        }
    }

    /** Holds a value against its ends; the nearer end is the nearest that works. */
    static void within(String subject, Quantity value, Quantity least, Quantity most) {
        if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
            throw RefusedInput.of(
                    "mesh.within",
                    Phrases.phrase("mesh." + subject),
                    value.text(),
                    least.text(),
                    most.text(),
                    (value.compareTo(least) < 0 ? least : most).text());
        }
    }

    private static Quantity length(String text) {
        return Quantity.parse(Dimension.LENGTH, text);
    }

    private static Quantity degrees(double degrees) {
        String text = degrees == Math.rint(degrees) ? Long.toString((long) degrees) : Double.toString(degrees);
        return Quantity.parse(Dimension.ANGLE, text + " deg");
    }

    private RefusedInput nearest() {
        Optional<RefusedInput> larger =
                smallestModule().map(module -> refusal("module", wish.module() + " mm", module + " mm"));
        return larger.or(this::otherAngle)
                .or(this::moreLeaves)
                .or(this::lessError)
                .orElseGet(() -> refusal("none"));
    }

    private RefusedInput refusal(String key, Object... values) {
        Object[] all = new Object[values.length + 2];
        all[0] = JsonOutput.word(wish.family());
        all[1] = wish.toothCount() + "/" + wish.leafCount();
        System.arraycopy(values, 0, all, 2, values.length);
        return RefusedInput.of("mesh." + key, all);
    }

    /** Teeth that print at a module print at every larger one, so the smallest is found by halving. */
    private Optional<ToothModule> smallestModule() {
        int refused = wish.module().nanometres() / MODULE_STEP;
        int last = LARGEST_MODULE / MODULE_STEP;
        int works = refused;
        do {
            if (works >= last) {
                return Optional.empty();
            }
            refused = works;
            works = Math.min(last, works + Math.max(1, works / 2));
        } while (!prints(works));
        while (works - refused > 1) {
            int middle = (works + refused) / 2;
            if (prints(middle)) {
                works = middle;
            } else {
                refused = middle;
            }
        }
        return Optional.of(new ToothModule(works * MODULE_STEP));
    }

    private boolean prints(int steps) {
        return wish.withModule(new ToothModule(steps * MODULE_STEP)).teeth().isPresent();
    }

    private Optional<RefusedInput> otherAngle() {
        return wish.pressureAngle()
                .flatMap(asked -> IntStream.rangeClosed(LEAST_ANGLE * ANGLE_STEPS, MOST_ANGLE * ANGLE_STEPS)
                        .mapToObj(step -> degrees((double) step / ANGLE_STEPS))
                        .sorted((one, other) ->
                                Double.compare(Math.abs(one.si() - asked.si()), Math.abs(other.si() - asked.si())))
                        .filter(angle -> wish.withAngle(angle).teeth().isPresent())
                        .findFirst()
                        .map(angle -> refusal("otherAngle", asked.text(), angle.text())));
    }

    private Optional<RefusedInput> moreLeaves() {
        return IntStream.rangeClosed(wish.leafCount() + 1, Math.min(MOST_LEAVES, wish.toothCount()))
                .filter(leaves -> wish.withLeaves(leaves).teeth().isPresent())
                .boxed()
                .findFirst()
                .map(leaves -> refusal("moreLeaves", wish.leafCount(), leaves));
    }

    /** Errors are looked for in hundredths of a millimetre; a smaller one leaves more play, so halving finds the largest. */
    private Optional<RefusedInput> lessError() {
        int works = 0;
        int refused = (int) Math.ceil(wish.centreError().in("mm") * HUNDREDTHS);
        if (refused == 0 || errorOf(works).teeth().isEmpty()) {
            return Optional.empty();
        }
        while (refused - works > 1) {
            int middle = (works + refused) / 2;
            if (errorOf(middle).teeth().isPresent()) {
                works = middle;
            } else {
                refused = middle;
            }
        }
        return Optional.of(refusal(
                "lessError",
                wish.centreError().text(),
                errorOf(works).centreError().text()));
    }

    private MeshWish errorOf(int hundredths) {
        Quantity less = Quantity.of(BigFraction.of(hundredths, HUNDREDTHS), Dimension.LENGTH.unit("mm"));
        return new MeshWish(
                wish.toothCount(),
                wish.leafCount(),
                wish.family(),
                wish.module(),
                wish.pressureAngle(),
                wish.friction(),
                less,
                wish.thinning(),
                wish.nozzle());
    }
}
