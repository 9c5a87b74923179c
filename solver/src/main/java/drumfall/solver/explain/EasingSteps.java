// SPDX-FileCopyrightText: 2026 The Drumfall authors
// SPDX-License-Identifier: Apache-2.0
package drumfall.solver.explain;

import drumfall.solver.brief.Brief;
import drumfall.solver.brief.BriefChange;
import drumfall.solver.quantity.Quantity;
import drumfall.solver.quantity.Unit;
import drumfall.solver.sheet.FieldKind;
import drumfall.solver.sheet.SheetField;
import drumfall.solver.sheet.SheetFields;
import drumfall.solver.sheet.SheetResult;
import java.math.BigInteger;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The values an easing goes through, step by step away from what the brief says; step 0 is the brief itself.
 *
 * <p>Counts step by one, or by the brief's own step where it has one. Quantities step by a hundredth of the power of ten
 * of what was typed, in its unit, on whole steps: 1.25 m goes to 1.26 m, 5 kg to 5.01 kg, 300 N to 301 N.
 */
final class EasingSteps {
    /** No step leads further than ten times the figure, or a tenth of it; than ten steps where the figure is zero. */
    private static final int REACH = 10;

    /** Counts go so many steps at most: every one adds to the search. */
    private static final int COUNT_STEPS = 12;

    private static final Map<String, SheetField> FIELDS =
            SheetFields.of(Brief.class).stream().collect(Collectors.toMap(SheetField::pointer, Function.identity()));

    /** Figures whose every step is searched on its own step by more, in their own unit. */
    private static final Map<String, String> COARSE = Map.of(
            "/parts/gap", "0.1 mm", "/drum/length", "1 mm", "/printer/nozzle", "0.05 mm", "/weight/reserve", "5 %");

    /** Ranges that the brief itself steps through, and the field of the step. */
    private static final Map<String, String> OWN_STEP =
            Map.of("/escapement/teeth", "/escapement/teeth/step", "/drum/diameter", "/drum/diameter/step");

    private final Brief brief;
    private final Easing easing;
    private final boolean count;
    private final Unit unit;
    private final BigFraction typed;
    private final BigFraction step;
    private final int last;

    /**
     * The steps of an easing.
     *
     * @param brief the brief
     * @param easing the easing, of a figure that stands in the brief
     */
    EasingSteps(Brief brief, Easing easing) {
        this.brief = brief;
        this.easing = easing;
        SheetField field = FIELDS.get(easing.pointer());
        this.count = field.kind() == FieldKind.COUNT;
        String text = BriefChange.typed(brief, easing.pointer());
        if (count) {
            this.unit = null;
            this.typed = BigFraction.of(Integer.parseInt(text));
            this.step = ownStep().map(BigFraction::of).orElse(BigFraction.ONE);
        } else {
            Quantity quantity = Quantity.parse(field.measures().get(0).dimension(), text);
            this.unit = unitOf(quantity);
            this.typed = quantity.exact().divide(unit.factor());
            this.step = stepOf(quantity);
        }
        this.last = lastValid();
    }

    /** The last step that leads to a brief in order; 0 if there is none. */
    int last() {
        return last;
    }

    /** What stands in the brief after a number of steps, as a maker would type it. */
    String text(int steps) {
        if (steps == 0) {
            return BriefChange.typed(brief, easing.pointer());
        }
        BigFraction amount = amount(steps);
        return count
                ? amount.getNumerator().toString()
                : Quantity.of(amount, unit).text();
    }

    /** The brief after a number of steps, unless it is not in order. */
    Optional<Brief> at(int steps) {
        return steps == 0 ? Optional.of(brief) : result(steps).accepted();
    }

    /** How many steps at least it takes to change a figure by so much, typed with its unit; counts by so many. */
    OptionalInt stepsFor(String change) {
        BigFraction amount = count
                ? BigFraction.of(Integer.parseInt(change))
                : Quantity.parse(unit.dimension(), change).exact().divide(unit.factor());
        int steps = Math.max(1, ceiling(amount.divide(step)));
        return steps <= last ? OptionalInt.of(steps) : OptionalInt.empty();
    }

    private SheetResult<Brief> result(int steps) {
        return count
                ? BriefChange.of(brief, easing.pointer(), amount(steps).intValue())
                : BriefChange.of(brief, easing.pointer(), text(steps));
    }

    private BigFraction amount(int steps) {
        BigFraction moved = step.multiply(steps);
        if (count || easing.effect() == Easing.Effect.CHOICE) {
            return easing.way() == Easing.Way.UP ? typed.add(moved) : typed.subtract(moved);
        }
        BigFraction whole = typed.divide(step);
        return easing.way() == Easing.Way.UP
                ? step.multiply(floor(whole)).add(moved)
                : step.multiply(ceiling(whole)).subtract(moved);
    }

    private int lastValid() {
        int low = 0;
        int high = furthest();
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (at(middle).isPresent()) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    private int furthest() {
        if (count || easing.effect() == Easing.Effect.CHOICE) {
            return COUNT_STEPS;
        }
        if (typed.signum() == 0) {
            return REACH;
        }
        BigFraction reach = easing.way() == Easing.Way.UP
                ? typed.multiply(REACH - 1)
                : typed.multiply(REACH - 1).divide(REACH);
        return Math.max(1, floor(reach.divide(step)));
    }

    private Optional<Integer> ownStep() {
        return Optional.ofNullable(OWN_STEP.get(group()))
                .map(pointer -> Integer.valueOf(BriefChange.typed(brief, pointer)));
    }

    private String group() {
        return easing.pointer().substring(0, easing.pointer().lastIndexOf('/'));
    }

    private BigFraction stepOf(Quantity quantity) {
        String stated = COARSE.containsKey(easing.pointer())
                ? COARSE.get(easing.pointer())
                : OWN_STEP.containsKey(group()) ? BriefChange.typed(brief, OWN_STEP.get(group())) : null;
        if (stated != null) {
            return Quantity.parse(quantity.dimension(), stated).exact().divide(unit.factor());
        }
        double size = Math.abs(typed.doubleValue());
        int power = size > 0 ? (int) Math.floor(Math.log10(size) + 1e-9) - 2 : -2;
        BigInteger ten = BigInteger.TEN.pow(Math.abs(power));
        return power < 0 ? BigFraction.of(BigInteger.ONE, ten) : BigFraction.of(ten);
    }

    /** The unit in which a quantity was typed, of several parts the last. */
    private static Unit unitOf(Quantity quantity) {
        return quantity.dimension().units().stream()
                .flatMap(unit -> unit.spellings().stream().map(spelling -> Map.entry(spelling, unit)))
                .filter(entry -> quantity.text().strip().endsWith(entry.getKey()))
                .max(Comparator.comparingInt(entry -> entry.getKey().length()))
                .map(Map.Entry::getValue)
                .orElseGet(quantity.dimension()::baseUnit);
    }

    private static int floor(BigFraction value) {
        return value.getNumerator().divide(value.getDenominator()).intValueExact();
    }

    private static int ceiling(BigFraction value) {
        int floor = floor(value);
        return BigFraction.of(floor).compareTo(value) < 0 ? floor + 1 : floor;
    }
}
